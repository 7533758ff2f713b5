/** In Spanish: the problems of a homework, by the function that gives the answer. */
import type { homeworkProblemTexts as english } from '../english/homeworkProblems';
import type { WithOtherWords } from '../translated';

export const homeworkProblemTexts: WithOtherWords<typeof english> = {
  'PLANTS.DENSITY':
    'Surcos a {row_spacing} ft, plantas a {plant_spacing} in en el surco: ¿cuántas plantas por acre?',
  'PLANTS.INROWS':
    'Parcela de {length} por {width} ft, surcos a lo largo a {row_spacing} ft, plantas a {plant_spacing} in: ¿cuántas caben?',
  'PLANTS.INHILLS':
    'Parcela de {length} por {width} ft, golpes a {hill_spacing} ft en ambos sentidos, {plants_per_hill} plantas por golpe: ¿cuántas plantas caben?',
  'PLANTS.INBEDS':
    'Parcela de {length} por {width} ft, camas de {bed_width} ft, pasillos de {path_width} ft, {rows_per_bed} surcos por cama, a {plant_spacing} in: ¿cuántas plantas?',
  'PLANTS.INAREA':
    '{area} ft² de cualquier forma, surcos a {row_spacing} ft, plantas a {plant_spacing} in: ¿cuántas plantas como máximo?',
  'PLANTS.FORYIELD': 'Una planta da {yield_per_plant} lb. ¿Cuántas plantas dan {wanted_yield} lb?',
  'AREA.FORPLANTS':
    '{plants} plantas, surcos a {row_spacing} ft, a {plant_spacing} in en el surco: ¿cuántos ft² necesitan?',
  'AREA.FROM': '¿Cuántos ft² son {value} acres?',
  'ROW.FORPLANTS': '¿Cuántos ft de surco necesitan {plants} plantas a {plant_spacing} in entre sí?',
  'ROW.INAREA': '¿Cuántos ft de surco hay en {area} ft² con surcos a {row_spacing} ft?',
  'ROW.FORDEMAND':
    '{wanted_per_week} lb por semana durante {picking_weeks} semanas; 100 ft dan {yield_per_100} lb en ese tiempo: ¿cuántos ft de surco?',
  'STAND.COUNT':
    '{plants_standing} plantas en pie en {row_length} ft previstos para una cada {plant_spacing} in: ¿qué fracción se estableció?',
  'SEED.NEEDED':
    'Germinación {germination}, y de ella {field_emergence} en el campo: ¿cuántas semillas para {plants} plantas en promedio?',
  'SEED.CHANCE':
    '{seeds} semillas de {germination} de germinación en un golpe: ¿qué probabilidad de al menos {plants} plantas?',
  'SEED.WEIGHT': 'Una onza tiene {seeds_per_unit} semillas. ¿Cuántas onzas son {seeds} semillas?',
  'SEED.TEST': 'En una prueba germinaron {germinated} de {tested} semillas. ¿Qué fracción es?',
  'TRAY.CELLS':
    'Germinación {germination}, una semilla por celda, {culls} de descarte: ¿cuántas celdas para {plants} plantas en promedio?',
  'TRAY.COUNT': '¿Cuántas bandejas de {cells_per_tray} celdas contienen {cells} celdas?',
  'TRAY.MIX': '¿Cuántos ft³ de sustrato llenan {cells} celdas de {cell_volume} in³?',
  'DATE.SETOUT': 'La última helada es el {last_frost}: ¿en qué fecha, {days_after} días después, trasplanta?',
  'DATE.STARTTRANSPLANTS': 'Trasplanta el {set_out}. ¿En qué fecha siembra para ello, {weeks} semanas antes?',
  'DATE.HARDENOFF': 'Trasplanta el {set_out}. ¿En qué fecha empieza un endurecimiento de {days} días?',
  'DATE.LASTSOWING':
    'Helada {first_frost}; {days_to_maturity} días a cosecha, {harvest_days} de cosecha, {fall_days} por otoño, {frost_margin} de margen: ¿última fecha de siembra?',
  'DATE.FIRSTPICK':
    'Trasplante el {start}; sobre: {days_to_maturity} días desde la semilla; el trasplante gana {transplant_gain}: ¿fecha del primer corte?',
  'DATE.LASTPICK':
    'Primer corte {first_pick}, cosecha de {harvest_days} días, sin helada de por medio: ¿fecha del último corte?',
  'SEASON.DAYS': 'Última helada {last_frost}, primera helada {first_frost}. ¿Cuántos días hay entre ellas?',
  'SEASON.SPARE':
    'Última helada {last_frost}, primera helada {first_frost}, {days_needed} días necesarios: ¿cuántos días sobran?',
  'HEAT.DAY': 'Máxima {high} F, mínima {low} F, base {base} F: ¿cuántos grados día, por la media de ambas?',
  'FLOWER.FEMALESHARE':
    '{pollenizer_share} son polinizadoras, con {monoecious_female} de flores femeninas; las demás solo femeninas: ¿qué fracción?',
  'FLOWER.MALESPERFEMALE':
    '{female_share} de las flores son femeninas: ¿cuántas masculinas hay por cada una?',
  'FLOWER.SHARE':
    'Planta {pollenizers} polinizadora por {others} de las demás: ¿qué fracción son polinizadoras?',
  'FLOWER.POLLENIZERS':
    '{plants} lugares, {share} deben quedar como polinizadoras, {losses} de estas se perderán: ¿cuántas pone?',
  'FLOWER.NOPOLLENIZER':
    '{share} de la semilla mezclada son polinizadoras: ¿qué probabilidad de que {plants} plantas no tengan ninguna?',
  'FLOWER.HIVES': '¿Cuántas colmenas necesita un campo de {area} ft² con {hives_per_acre} por acre?',
  'HARVEST.YIELD':
    '100 ft dan {yield_per_100} lb, se puede vender {marketable}: ¿cuántas lb se pueden vender de {row_length} ft?',
  'HARVEST.PICKS':
    'Primer corte {first_pick}, luego cada {every_days} días, a más tardar el {last_pick}: ¿cuántas veces corta?',
  'HARVEST.FORECAST':
    '{fruit_per_plant} frutos por planta, {plants} plantas, {fruit_weight} lb por fruto: ¿cuántas lb cuelgan?',
  'PICKLE.JARS':
    '14 lb de pepinos llenan 7 frascos de un cuarto (quart). ¿Cuántos enteros llenan {pounds} lb?',
  'BUDGET.RETURN': 'Ingreso {income}, costos {costs}. ¿Cuál es el retorno sobre los costos?',
  'BUDGET.BREAKEVENPRICE':
    'Un cultivo cuesta {total_cost} y se venden {total_yield} lb: ¿con qué precio por lb se cubre el costo?',
  'BUDGET.BREAKEVENYIELD':
    'Costos {costs_not_tied_to_yield} en todo caso; una caja se vende a {price} y cortarla cuesta {harvest_cost}: ¿cuántas cajas cubren el costo?',
  'BUDGET.PICKHOURS': '{row_length} ft de surco se cortan {picks} veces, {rate} ft por hora: ¿cuántas horas?',
  'SUPPLY.HILLSOIL':
    '{hills} montículos, cada uno un casquete de esfera de {diameter} in de ancho y {height} in de alto: ¿cuántos ft³ de tierra?',
  'SUPPLY.FERTILIZER':
    '{rate} lb de N por acre, un saco con {grade} de N: ¿cuántas lb de él para {area} ft²?',
  'SUPPLY.WATER': '¿Cuántos galones (de 231 in³) ponen {depth} in de agua en {area} ft²?',
  'SUPPLY.WATERNEED':
    'ET {reference_et} por día, coeficiente {crop_coefficient}, {days} días, {rain} in de lluvia en total: ¿cuántas in hacen falta?',
  'SUPPLY.COVER':
    '{rows} surcos de {row_length} ft, {end_tuck} ft de cubierta enterrados en cada extremo: ¿cuántos ft de cubierta?',
  'SUPPLY.TRELLIS':
    '{rows} surcos de {row_length} ft, postes en ambos extremos y a lo sumo a {post_spacing} ft: ¿cuántos postes?',
  'ROTATION.YEARS':
    'Hubo allí cucurbitáceas por última vez en {past_years}: ¿cuántas temporadas completas queda libre antes de {year}?',
};
