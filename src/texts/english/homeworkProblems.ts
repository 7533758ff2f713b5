/**
 * The problems of a homework, by the function that gives the answer. Beside the catalogue, not in it: every pane has the
 * catalogue whole, and these are wanted only where homework is made. Those with "metric" behind are said in its place in
 * that system; in the others the units are filled in.
 */
export const homeworkProblemTexts = {
  'PLANTS.DENSITY':
    'Rows {row_spacing} {length_unit} apart, plants {plant_spacing} {spacing_unit} apart in the row: how many plants per {land_unit}?',
  'PLANTS.INROWS':
    'Plot {length} by {width} {length_unit}, rows along its length {row_spacing} {length_unit} apart, plants {plant_spacing} {spacing_unit} apart: how many fit?',
  'PLANTS.INHILLS':
    'Plot {length} by {width} {length_unit}, hills {hill_spacing} {length_unit} apart each way, {plants_per_hill} plants a hill: how many plants fit?',
  'PLANTS.INBEDS':
    'Plot {length} by {width} {length_unit}, lengthwise beds {bed_width} {length_unit}, paths {path_width} {length_unit}, {rows_per_bed} rows a bed, {plant_spacing} {spacing_unit} apart: how many plants?',
  'PLANTS.INAREA':
    '{area} {area_unit} of any shape, rows {row_spacing} {length_unit} apart, plants {plant_spacing} {spacing_unit} apart: how many plants at most?',
  'PLANTS.FORYIELD':
    'A plant bears {yield_per_plant} {mass_unit}. How many plants bear {wanted_yield} {mass_unit}?',
  'AREA.FORPLANTS':
    '{plants} plants, rows {row_spacing} {length_unit} apart, {plant_spacing} {spacing_unit} apart in the row: how many {area_unit} do they need?',
  'AREA.FROM': 'How many sq ft are {value} acres?',
  'AREA.FROM metric': 'How many sq m are {value} hectares?',
  'ROW.FORPLANTS':
    'How many {length_unit} of row do {plants} plants need that stand {plant_spacing} {spacing_unit} apart?',
  'ROW.INAREA':
    'How many {length_unit} of row lie on {area} {area_unit} when rows are {row_spacing} {length_unit} apart?',
  'ROW.FORDEMAND':
    '{wanted_per_week} {mass_unit} a week for {picking_weeks} weeks; 100 {length_unit} yield {yield_per_100} {mass_unit} in that time: how many {length_unit} of row?',
  'STAND.COUNT':
    '{plants_standing} plants stand on {row_length} {length_unit} meant for one each {plant_spacing} {spacing_unit}: which share of the stand?',
  'SEED.NEEDED':
    'Germination {germination}, {field_emergence} of that in the field: how many seeds for {plants} plants on average?',
  'SEED.PERHILL':
    'Germination {germination}, {field_emergence} of that in the field: seeds a hill for at least {plants_per_hill} {plants_per_hill|plant|plants} with a chance of {assurance}?',
  'SEED.CHANCE':
    '{seeds} seeds of {germination} germination in a hill: which chance of at least {plants} plants?',
  'SEED.WEIGHT': 'An ounce holds {seeds_per_unit} seeds. How many ounces are {seeds} seeds?',
  'SEED.WEIGHT metric': 'A gram holds {seeds_per_unit} seeds. How many grams are {seeds} seeds?',
  'SEED.TEST': '{germinated} of {tested} seeds germinated in a test. Which share is that?',
  'SEED.STORAGELEFT':
    'Cucumber seed keeps for 5 years. How many are left in {year} to seed packed in {year_packed}?',
  'TRAY.CELLS':
    'Germination {germination}, one seed a cell, {culls} culled: how many cells for {plants} plants on average?',
  'TRAY.COUNT': 'How many trays of {cells_per_tray} cells hold {cells} cells?',
  'TRAY.MIX': 'How many {mix_unit} of mix fill {cells} cells of {cell_volume} {cell_unit}?',
  'DATE.SETOUT':
    'The last frost is on {last_frost}: on which date, {days_after} days after it, do you set out?',
  'DATE.STARTTRANSPLANTS':
    'You set out on {set_out}. On which date do you sow for that, {weeks} weeks before?',
  'DATE.HARDENOFF': 'You set out on {set_out}. On which date does a hardening of {days} days begin?',
  'DATE.FIRSTSOWING':
    'The last frost is on {last_frost}: on which date, {days_after} days after it, do you sow in the open?',
  'DATE.LASTSOWING':
    'Frost {first_frost}; {days_to_maturity} days to maturity, {harvest_days} of harvest, {fall_days} for fall, {frost_margin} spare: last sowing date?',
  'DATE.FIRSTPICK':
    'Set out on {start}; packet: {days_to_maturity} days from seed; transplants gain {transplant_gain} days: date of the first pick?',
  'DATE.LASTPICK':
    'First pick {first_pick}; you pick for {harvest_days} days after it, no frost in the way: date of the last pick?',
  'DATE.COVEROFF':
    'First pick {first_pick}; female cucumber flowers open {flower_to_pick} days before: by which date is the cover off?',
  'DATE.AFTERSPRAY':
    'Sprayed on {spray_date}; its label asks for {label_days} {label_days|day|days} to harvest: first date to pick?',
  'DATE.AFTERMANURE':
    'Raw manure on {manure_date}; fruit touches the soil: {touches_soil}. By the US organic rule: first harvest?',
  'SEASON.DAYS':
    'The last frost is on {last_frost}. How many days after it comes the first frost, on {first_frost}?',
  'SEASON.SPARE':
    'Last frost {last_frost}, first frost {first_frost}, {days_needed} days needed: how many days to spare?',
  'FROST.SPRINGDATE': 'Last frosts {last_dates}: risk {risk} after which date in {year} (PERCENTILE.INC)?',
  'FROST.FALLDATE': 'First frosts {first_dates}: risk {risk} before which date in {year} (PERCENTILE.INC)?',
  'FROST.CHANCE': 'First frosts {frost_dates}: which share came earlier in its year than {date}?',
  'HEAT.DAY':
    'High {high} {temperature_unit}, low {low} {temperature_unit}, base {base} {temperature_unit}: how many degree days, by the mean of the two?',
  'HEAT.SUM':
    'Three days, highs {highs}, lows {lows}, base {base} {temperature_unit}: how many degree days in all, by the means?',
  'HEAT.DATE':
    'From {start}, highs {highs}, lows {lows}, base {base} {temperature_unit}: date of {target} degree days by means?',
  'EMERGENCE.DAYS':
    'Cucumbers are up in 13 days at 59 °F, in 6 at 68; rates (1/days) in a line: days at {soil_temperature} °F?',
  'EMERGENCE.DAYS metric':
    'Cucumbers are up in 13 days at 15 °C, in 6 at 20; rates (1/days) in a line: days at {soil_temperature} °C?',
  'EMERGENCE.PERCENT':
    'Of muskmelon seed 38% is normal at 68 °F, 94% at 77 °F; in a line between: which share at {soil_temperature} °F?',
  'EMERGENCE.PERCENT metric':
    'Of muskmelon seed 38% is normal at 20 °C, 94% at 25 °C; in a line between: which share at {soil_temperature} °C?',
  'FLOWER.FEMALESHARE':
    '{pollenizer_share} of plants are pollenizers with {monoecious_female} female flowers, the rest have 100%: which share of all flowers?',
  'FLOWER.MALESPERFEMALE':
    '{female_share} of the flowers are female: how many male flowers are there to each?',
  'FLOWER.SHARE': 'You plant {pollenizers} pollenizer to {others} other plants: which share are pollenizers?',
  'FLOWER.POLLENIZERS':
    'Of {plants} plants {losses} of the pollenizers die, no others: how many pollenizers to set for {share} of the living?',
  'FLOWER.NOPOLLENIZER':
    '{share} of mixed seed are pollenizers: which chance that {plants} plants hold none?',
  'FLOWER.GROUPSIZE':
    '{share} of mixed seed are pollenizers: how few plants hold at least one with a chance of {assurance}?',
  'FLOWER.HIVES':
    'How many hives does a field of {area} {area_unit} need at {hives_per_acre} per {land_unit}?',
  'HARVEST.YIELD':
    '100 {length_unit} yield {yield_per_100} {mass_unit}, {marketable} can be sold: how many {mass_unit} can be sold of {row_length} {length_unit}?',
  'HARVEST.PICKS':
    'First pick {first_pick}, then every {every_days} days, at the latest on {last_pick}: how often do you pick?',
  'HARVEST.FORECAST':
    '{fruit_per_plant} fruit a plant, {plants} plants, {fruit_weight} {mass_unit} a fruit: how many {mass_unit} hang there?',
  'HARVEST.BUSHELS': 'A bushel of cucumbers weighs 48 lb. How many bushels are {pounds} lb?',
  'PICKLE.JARS':
    'In US measures 14 lb of cucumbers fill 7 quarts. How many whole quarts do {pounds} lb fill?',
  'PICKLE.POUNDS': 'In US measures 14 lb of cucumbers fill 7 quarts. How many lb fill {jars} quarts?',
  'BUDGET.RETURN': 'Income {income}, costs {costs}. What is the return above costs?',
  'BUDGET.BREAKEVENPRICE':
    'A crop costs {total_cost}, {total_yield} {mass_unit} are sold: at which price for one {mass_unit} does it break even?',
  'BUDGET.BREAKEVENYIELD':
    'Costs {costs_not_tied_to_yield} in any case; a box sells at {price}, picking it costs {harvest_cost}: boxes to break even, to a tenth?',
  'BUDGET.PICKHOURS':
    '{row_length} {length_unit} of row are picked {picks} times, {rate} {length_unit} an hour: how many hours?',
  'SUPPLY.HILLSOIL':
    '{hills} hills, each a cap of a ball {diameter} {spacing_unit} wide and {height} {spacing_unit} high: how many {mix_unit} of soil?',
  'SUPPLY.FERTILIZER':
    '{rate} {mass_unit} of N per {land_unit}, a bag with {grade} N: how many {mass_unit} of it for {area} {area_unit}?',
  'SUPPLY.WATER': 'How many gallons (231 cu in each) bring {depth} in of water onto {area} sq ft?',
  'SUPPLY.WATER metric': 'How many litres bring {depth} mm of water onto {area} sq m?',
  'SUPPLY.WATERNEED':
    'ET {reference_et} inches a day, coefficient {crop_coefficient}, {days} days, {rain} inches of rain in all: how many inches are needed?',
  'SUPPLY.WATERNEED metric':
    'ET {reference_et} mm a day, coefficient {crop_coefficient}, {days} days, {rain} mm of rain in all: how many mm are needed?',
  'SUPPLY.DRIPRUNTIME':
    '{depth} in of water on a strip {wetted_width} in wide, tape of {flow} gal an hour per 100 ft: how many hours?',
  'SUPPLY.DRIPRUNTIME metric':
    '{depth} mm of water on a strip {wetted_width} cm wide, tape of {flow} L an hour per m: how many hours?',
  'SUPPLY.COVER':
    '{rows} rows of {row_length} {length_unit}, {end_tuck} {length_unit} of cover buried at each end: how many {length_unit} of cover?',
  'SUPPLY.TRELLIS':
    '{rows} rows of {row_length} {length_unit}, posts at both ends and at most {post_spacing} {length_unit} apart: how many posts?',
  'BEETLE.THRESHOLD':
    'Cucumber beetles on {crop}; it takes bacterial wilt: {wilt_prone}. How many a plant are the threshold?',
  'ROTATION.YEARS':
    'Cucurbits stood there last in {past_years}: how many full seasons is it free before {year}?',
  'CROP.VALUE': 'Crop guide, {crop}: which is the {bound} end of its days to maturity?',
} as const;

/** Words that a function is given, as a problem says them. */
export const homeworkProblemWords = {
  yes: 'yes',
  no: 'no',
  low: 'low',
  high: 'high',
  'slicing cucumber': 'slicing cucumber',
  'summer squash': 'summer squash',
  pumpkin: 'pumpkin',
  muskmelon: 'muskmelon',
  watermelon: 'watermelon',
} as const;
