/** In Spanish: the problems of a homework, by the function that gives the answer. */
import type {
  homeworkProblemTexts as english,
  homeworkProblemWords as words,
} from '../english/homeworkProblems';
import type { WithOtherWords } from '../translated';

export const homeworkProblemTexts: WithOtherWords<typeof english> = {
  'PLANTS.DENSITY':
    'Surcos a {row_spacing} {length_unit}, plantas a {plant_spacing} {spacing_unit} en el surco: ¿cuántas plantas por {land_unit}?',
  'PLANTS.INROWS':
    'Parcela de {length} por {width} {length_unit}, surcos a lo largo a {row_spacing} {length_unit}, plantas a {plant_spacing} {spacing_unit}: ¿cuántas caben?',
  'PLANTS.INHILLS':
    'Parcela de {length} por {width} {length_unit}, golpes a {hill_spacing} {length_unit} en ambos sentidos, {plants_per_hill} plantas por golpe: ¿cuántas plantas caben?',
  'PLANTS.INBEDS':
    'Parcela de {length} por {width} {length_unit}, camas a lo largo de {bed_width} {length_unit}, pasillos de {path_width} {length_unit}, {rows_per_bed} surcos por cama, a {plant_spacing} {spacing_unit}: ¿cuántas plantas?',
  'PLANTS.INAREA':
    '{area} {area_unit} de cualquier forma, surcos a {row_spacing} {length_unit}, plantas a {plant_spacing} {spacing_unit}: ¿cuántas plantas como máximo?',
  'PLANTS.FORYIELD':
    'Una planta da {yield_per_plant} {mass_unit}. ¿Cuántas plantas dan {wanted_yield} {mass_unit}?',
  'AREA.FORPLANTS':
    '{plants} plantas, surcos a {row_spacing} {length_unit}, a {plant_spacing} {spacing_unit} en el surco: ¿cuántos {area_unit} necesitan?',
  'AREA.FROM': '¿Cuántos ft² son {value} acres?',
  'AREA.FROM metric': '¿Cuántos m² son {value} hectáreas?',
  'ROW.FORPLANTS':
    '¿Cuántos {length_unit} de surco necesitan {plants} plantas a {plant_spacing} {spacing_unit} entre sí?',
  'ROW.INAREA':
    '¿Cuántos {length_unit} de surco hay en {area} {area_unit} con surcos a {row_spacing} {length_unit}?',
  'ROW.FORDEMAND':
    '{wanted_per_week} {mass_unit} por semana durante {picking_weeks} semanas; 100 {length_unit} dan {yield_per_100} {mass_unit} en ese tiempo: ¿cuántos {length_unit} de surco?',
  'STAND.COUNT':
    '{plants_standing} plantas en pie en {row_length} {length_unit} previstos para una cada {plant_spacing} {spacing_unit}: ¿qué fracción se estableció?',
  'SEED.NEEDED':
    'Germinación {germination}, y de ella {field_emergence} en el campo: ¿cuántas semillas para {plants} plantas en promedio?',
  'SEED.PERHILL':
    'Germinación {germination}, y de ella {field_emergence} en el campo: ¿cuántas semillas por golpe para al menos {plants_per_hill} {plants_per_hill|planta|plantas} con probabilidad de {assurance}?',
  'SEED.CHANCE':
    '{seeds} semillas de {germination} de germinación en un golpe: ¿qué probabilidad de al menos {plants} plantas?',
  'SEED.WEIGHT': 'Una onza tiene {seeds_per_unit} semillas. ¿Cuántas onzas son {seeds} semillas?',
  'SEED.WEIGHT metric': 'Un gramo tiene {seeds_per_unit} semillas. ¿Cuántos gramos son {seeds} semillas?',
  'SEED.TEST': 'En una prueba germinaron {germinated} de {tested} semillas. ¿Qué fracción es?',
  'SEED.STORAGELEFT':
    'La semilla de pepino dura 5 años. ¿Cuántos le quedan en {year} a la envasada en {year_packed}?',
  'TRAY.CELLS':
    'Germinación {germination}, una semilla por celda, {culls} de descarte: ¿cuántas celdas para {plants} plantas en promedio?',
  'TRAY.COUNT': '¿Cuántas bandejas de {cells_per_tray} celdas contienen {cells} celdas?',
  'TRAY.MIX': '¿Cuántos {mix_unit} de sustrato llenan {cells} celdas de {cell_volume} {cell_unit}?',
  'DATE.SETOUT': 'La última helada es el {last_frost}: ¿en qué fecha, {days_after} días después, trasplanta?',
  'DATE.STARTTRANSPLANTS': 'Trasplanta el {set_out}. ¿En qué fecha siembra para ello, {weeks} semanas antes?',
  'DATE.HARDENOFF': 'Trasplanta el {set_out}. ¿En qué fecha empieza un endurecimiento de {days} días?',
  'DATE.FIRSTSOWING':
    'La última helada es el {last_frost}: ¿en qué fecha, {days_after} días después, siembra al aire libre?',
  'DATE.LASTSOWING':
    'Helada {first_frost}; {days_to_maturity} días a cosecha, {harvest_days} de cosecha, {fall_days} por otoño, {frost_margin} de margen: ¿última fecha de siembra?',
  'DATE.FIRSTPICK':
    'Trasplante el {start}; sobre: {days_to_maturity} días desde la semilla; el trasplante gana {transplant_gain} días: ¿fecha del primer corte?',
  'DATE.LASTPICK':
    'Primer corte {first_pick}; se corta durante {harvest_days} días después, sin helada de por medio: ¿fecha del último corte?',
  'DATE.COVEROFF':
    'Primer corte {first_pick}; las flores femeninas del pepino abren {flower_to_pick} días antes: ¿para qué fecha debe estar quitada la cubierta?',
  'DATE.AFTERSPRAY':
    'Se aplicó el {spray_date}; la etiqueta pide {label_days} {label_days|día|días} hasta la cosecha: ¿primera fecha de corte?',
  'DATE.AFTERMANURE':
    'Estiércol crudo el {manure_date}; el fruto toca el suelo: {touches_soil}. Por la regla orgánica de EE. UU.: ¿primera fecha de cosecha?',
  'SEASON.DAYS':
    'La última helada es el {last_frost}. ¿Cuántos días después llega la primera, el {first_frost}?',
  'SEASON.SPARE':
    'Última helada {last_frost}, primera helada {first_frost}, {days_needed} días necesarios: ¿cuántos días sobran?',
  'FROST.SPRINGDATE':
    'Últimas heladas {last_dates}: ¿después de qué fecha de {year} el riesgo es {risk} (PERCENTILE.INC)?',
  'FROST.FALLDATE':
    'Primeras heladas {first_dates}: ¿antes de qué fecha de {year} el riesgo es {risk} (PERCENTILE.INC)?',
  'FROST.CHANCE': 'Primeras heladas {frost_dates}: ¿qué fracción llegó en su año más temprano que el {date}?',
  'HEAT.DAY':
    'Máxima {high} {temperature_unit}, mínima {low} {temperature_unit}, base {base} {temperature_unit}: ¿cuántos grados día, por la media de ambas?',
  'HEAT.SUM':
    'Tres días, máximas {highs}, mínimas {lows}, base {base} {temperature_unit}: ¿cuántos grados día en total, por las medias?',
  'HEAT.DATE':
    'Desde el {start}, máximas {highs}, mínimas {lows}, base {base} {temperature_unit}: ¿fecha de {target} grados día, por las medias?',
  'EMERGENCE.DAYS':
    'El pepino emerge en 13 días a 59 °F, en 6 a 68; tasas (1/días) en línea recta: ¿días a {soil_temperature} °F?',
  'EMERGENCE.DAYS metric':
    'El pepino emerge en 13 días a 15 °C, en 6 a 20; tasas (1/días) en línea recta: ¿días a {soil_temperature} °C?',
  'EMERGENCE.PERCENT':
    'De la semilla de melón 38% es normal a 68 °F, 94% a 77 °F; en línea recta: ¿qué fracción a {soil_temperature} °F?',
  'EMERGENCE.PERCENT metric':
    'De la semilla de melón 38% es normal a 20 °C, 94% a 25 °C; en línea recta: ¿qué fracción a {soil_temperature} °C?',
  'FLOWER.FEMALESHARE':
    '{pollenizer_share} de las plantas son polinizadoras con {monoecious_female} de flores femeninas, las demás con 100%: ¿qué fracción de todas las flores?',
  'FLOWER.MALESPERFEMALE':
    '{female_share} de las flores son femeninas: ¿cuántas masculinas hay por cada una?',
  'FLOWER.SHARE':
    'Planta {pollenizers} polinizadora por {others} de las demás: ¿qué fracción son polinizadoras?',
  'FLOWER.POLLENIZERS':
    'De {plants} plantas muere {losses} de las polinizadoras y ninguna otra: ¿cuántas polinizadoras poner para que sean {share} de las vivas?',
  'FLOWER.NOPOLLENIZER':
    '{share} de la semilla mezclada son polinizadoras: ¿qué probabilidad de que {plants} plantas no tengan ninguna?',
  'FLOWER.GROUPSIZE':
    '{share} de la semilla mezclada son polinizadoras: ¿cuántas plantas bastan para tener al menos una con probabilidad de {assurance}?',
  'FLOWER.HIVES':
    '¿Cuántas colmenas necesita un campo de {area} {area_unit} con {hives_per_acre} por {land_unit}?',
  'HARVEST.YIELD':
    '100 {length_unit} dan {yield_per_100} {mass_unit}, se puede vender {marketable}: ¿cuánto se vende de {row_length} {length_unit}, en {mass_unit}?',
  'HARVEST.PICKS':
    'Primer corte {first_pick}, luego cada {every_days} días, a más tardar el {last_pick}: ¿cuántas veces corta?',
  'HARVEST.FORECAST':
    '{fruit_per_plant} frutos por planta, {plants} plantas, {fruit_weight} {mass_unit} por fruto: ¿cuánto cuelga, en {mass_unit}?',
  'HARVEST.BUSHELS': 'Un bushel de pepinos pesa 48 lb. ¿Cuántos bushels son {pounds} lb?',
  'PICKLE.JARS':
    'En medidas de EE. UU., 14 lb de pepinos llenan 7 frascos de un cuarto (quart). ¿Cuántos enteros llenan {pounds} lb?',
  'PICKLE.POUNDS':
    'En medidas de EE. UU., 14 lb de pepinos llenan 7 frascos de un cuarto (quart). ¿Cuántas lb llenan {jars}?',
  'BUDGET.RETURN': 'Ingreso {income}, costos {costs}. ¿Cuál es el retorno sobre los costos?',
  'BUDGET.BREAKEVENPRICE':
    'Un cultivo cuesta {total_cost} y se venden {total_yield} {mass_unit}: ¿con qué precio por {mass_unit} se cubre el costo?',
  'BUDGET.BREAKEVENYIELD':
    'Costos {costs_not_tied_to_yield} en todo caso; una caja se vende a {price} y cortarla cuesta {harvest_cost}: ¿cuántas cajas, al décimo, cubren el costo?',
  'BUDGET.PICKHOURS':
    '{row_length} {length_unit} de surco se cortan {picks} veces, {rate} {length_unit} por hora: ¿cuántas horas?',
  'SUPPLY.HILLSOIL':
    '{hills} montículos, cada uno un casquete de esfera de {diameter} {spacing_unit} de ancho y {height} {spacing_unit} de alto: ¿cuántos {mix_unit} de tierra?',
  'SUPPLY.FERTILIZER':
    '{rate} {mass_unit} de N por {land_unit}, un saco con {grade} de N: ¿cuánto de él para {area} {area_unit}, en {mass_unit}?',
  'SUPPLY.WATER': '¿Cuántos galones (de 231 in³) ponen {depth} in de agua en {area} ft²?',
  'SUPPLY.WATER metric': '¿Cuántos litros ponen {depth} mm de agua en {area} m²?',
  'SUPPLY.WATERNEED':
    'ET {reference_et} pulgadas por día, coeficiente {crop_coefficient}, {days} días, {rain} pulgadas de lluvia en total: ¿cuántas pulgadas hacen falta?',
  'SUPPLY.WATERNEED metric':
    'ET {reference_et} mm por día, coeficiente {crop_coefficient}, {days} días, {rain} mm de lluvia en total: ¿cuántos mm hacen falta?',
  'SUPPLY.DRIPRUNTIME':
    '{depth} in de agua en una franja de {wetted_width} in, cinta de {flow} gal por hora y 100 ft: ¿cuántas horas?',
  'SUPPLY.DRIPRUNTIME metric':
    '{depth} mm de agua en una franja de {wetted_width} cm, cinta de {flow} L por hora y m: ¿cuántas horas?',
  'SUPPLY.COVER':
    '{rows} surcos de {row_length} {length_unit}, {end_tuck} {length_unit} de cubierta enterrados en cada extremo: ¿cuántos {length_unit} de cubierta?',
  'SUPPLY.TRELLIS':
    '{rows} surcos de {row_length} {length_unit}, postes en ambos extremos y a lo sumo a {post_spacing} {length_unit}: ¿cuántos postes?',
  'BEETLE.THRESHOLD':
    'Escarabajos del pepino en el cultivo de {crop}; es propenso a la marchitez bacteriana: {wilt_prone}. ¿Cuántos por planta son el umbral?',
  'ROTATION.YEARS':
    'Hubo allí cucurbitáceas por última vez en {past_years}: ¿cuántas temporadas completas queda libre antes de {year}?',
  'CROP.VALUE': 'Guía de cultivos, {crop}: ¿cuál es el extremo {bound} de sus días a cosecha?',
};

export const homeworkProblemWords: WithOtherWords<typeof words> = {
  yes: 'sí',
  no: 'no',
  low: 'bajo',
  high: 'alto',
  'slicing cucumber': 'pepino',
  'summer squash': 'calabacín',
  pumpkin: 'calabaza de Halloween',
  muskmelon: 'melón',
  watermelon: 'sandía',
};
