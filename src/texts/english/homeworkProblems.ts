/**
 * The problems of a homework, by the function that gives the answer. Beside the catalogue, not in it: every pane has the
 * catalogue whole, and these are wanted only where homework is made.
 */
export const homeworkProblemTexts = {
  'PLANTS.DENSITY':
    'Rows {row_spacing} ft apart, plants {plant_spacing} in apart in the row: how many plants per acre?',
  'PLANTS.INROWS':
    'Plot {length} by {width} ft, rows along its length {row_spacing} ft apart, plants {plant_spacing} in apart: how many fit?',
  'PLANTS.INHILLS':
    'Plot {length} by {width} ft, hills {hill_spacing} ft apart each way, {plants_per_hill} plants a hill: how many plants fit?',
  'PLANTS.INBEDS':
    'Plot {length} by {width} ft, beds {bed_width} ft, paths {path_width} ft, {rows_per_bed} rows a bed, {plant_spacing} in apart: how many plants?',
  'PLANTS.INAREA':
    '{area} sq ft of any shape, rows {row_spacing} ft apart, plants {plant_spacing} in apart: how many plants at most?',
  'PLANTS.FORYIELD': 'A plant bears {yield_per_plant} lb. How many plants bear {wanted_yield} lb?',
  'AREA.FORPLANTS':
    '{plants} plants, rows {row_spacing} ft apart, {plant_spacing} in apart in the row: how many sq ft do they need?',
  'AREA.FROM': 'How many sq ft are {value} acres?',
  'ROW.FORPLANTS': 'How many ft of row do {plants} plants need that stand {plant_spacing} in apart?',
  'ROW.INAREA': 'How many ft of row lie on {area} sq ft when rows are {row_spacing} ft apart?',
  'ROW.FORDEMAND':
    '{wanted_per_week} lb a week for {picking_weeks} weeks; 100 ft yield {yield_per_100} lb in that time: how many ft of row?',
  'STAND.COUNT':
    '{plants_standing} plants stand on {row_length} ft meant for one each {plant_spacing} in: which share of the stand?',
  'SEED.NEEDED':
    'Germination {germination}, {field_emergence} of that in the field: how many seeds for {plants} plants on average?',
  'SEED.CHANCE':
    '{seeds} seeds of {germination} germination in a hill: which chance of at least {plants} plants?',
  'SEED.WEIGHT': 'An ounce holds {seeds_per_unit} seeds. How many ounces are {seeds} seeds?',
  'SEED.TEST': '{germinated} of {tested} seeds germinated in a test. Which share is that?',
  'TRAY.CELLS':
    'Germination {germination}, one seed a cell, {culls} culled: how many cells for {plants} plants on average?',
  'TRAY.COUNT': 'How many trays of {cells_per_tray} cells hold {cells} cells?',
  'TRAY.MIX': 'How many cu ft of mix fill {cells} cells of {cell_volume} cu in?',
  'DATE.SETOUT':
    'The last frost is on {last_frost}: on which date, {days_after} days after it, do you set out?',
  'DATE.STARTTRANSPLANTS':
    'You set out on {set_out}. On which date do you sow for that, {weeks} weeks before?',
  'DATE.HARDENOFF': 'You set out on {set_out}. On which date does a hardening of {days} days begin?',
  'DATE.LASTSOWING':
    'Frost {first_frost}; {days_to_maturity} days to maturity, {harvest_days} of harvest, {fall_days} for fall, {frost_margin} spare: last sowing date?',
  'DATE.FIRSTPICK':
    'Set out on {start}; packet: {days_to_maturity} days from seed; transplants gain {transplant_gain}: date of the first pick?',
  'DATE.LASTPICK':
    'First pick {first_pick}, harvest of {harvest_days} days, no frost in the way: date of the last pick?',
  'SEASON.DAYS': 'Last frost {last_frost}, first frost {first_frost}. How many days are between them?',
  'SEASON.SPARE':
    'Last frost {last_frost}, first frost {first_frost}, {days_needed} days needed: how many days to spare?',
  'HEAT.DAY': 'High {high} F, low {low} F, base {base} F: how many degree days, by the mean of the two?',
  'FLOWER.FEMALESHARE':
    '{pollenizer_share} are pollenizers, {monoecious_female} of their flowers female; the rest all female: which share?',
  'FLOWER.MALESPERFEMALE':
    '{female_share} of the flowers are female: how many male flowers are there to each?',
  'FLOWER.SHARE': 'You plant {pollenizers} pollenizer to {others} other plants: which share are pollenizers?',
  'FLOWER.POLLENIZERS':
    '{plants} places, {share} to stand as pollenizers, {losses} of these will be lost: how many do you set?',
  'FLOWER.NOPOLLENIZER':
    '{share} of mixed seed are pollenizers: which chance that {plants} plants hold none?',
  'FLOWER.HIVES': 'How many hives does a field of {area} sq ft need at {hives_per_acre} to the acre?',
  'HARVEST.YIELD':
    '100 ft yield {yield_per_100} lb, {marketable} can be sold: how many lb can be sold of {row_length} ft?',
  'HARVEST.PICKS':
    'First pick {first_pick}, then every {every_days} days, at the latest on {last_pick}: how often do you pick?',
  'HARVEST.FORECAST':
    '{fruit_per_plant} fruit a plant, {plants} plants, {fruit_weight} lb a fruit: how many lb hang there?',
  'PICKLE.JARS': '14 lb of cucumbers fill 7 quarts. How many whole quarts do {pounds} lb fill?',
  'BUDGET.RETURN': 'Income {income}, costs {costs}. What is the return above costs?',
  'BUDGET.BREAKEVENPRICE':
    'A crop costs {total_cost}, {total_yield} lb are sold: at which price a lb does it break even?',
  'BUDGET.BREAKEVENYIELD':
    'Costs {costs_not_tied_to_yield} in any case; a box sells at {price}, picking it costs {harvest_cost}: boxes to break even?',
  'BUDGET.PICKHOURS': '{row_length} ft of row are picked {picks} times, {rate} ft an hour: how many hours?',
  'SUPPLY.HILLSOIL':
    '{hills} hills, each a cap of a ball {diameter} in wide and {height} in high: how many cu ft of soil?',
  'SUPPLY.FERTILIZER':
    '{rate} lb of N to the acre, a bag with {grade} N: how many lb of it for {area} sq ft?',
  'SUPPLY.WATER': 'How many gallons (231 cu in each) bring {depth} in of water onto {area} sq ft?',
  'SUPPLY.WATERNEED':
    'ET {reference_et} in a day, coefficient {crop_coefficient}, {days} days, {rain} in of rain in all: how many in are needed?',
  'SUPPLY.COVER':
    '{rows} rows of {row_length} ft, {end_tuck} ft of cover buried at each end: how many ft of cover?',
  'SUPPLY.TRELLIS':
    '{rows} rows of {row_length} ft, posts at both ends and at most {post_spacing} ft apart: how many posts?',
  'ROTATION.YEARS':
    'Cucurbits stood there last in {past_years}: how many full seasons is it free before {year}?',
} as const;
