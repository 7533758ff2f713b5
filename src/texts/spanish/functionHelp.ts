/**
 * In Spanish: the tasks, and what each worksheet function is for and asks. The English of it is in README and in the
 * comments of the functions. Longer than most files: it is one list of sentences.
 */
import type { FunctionTexts } from '../translated';

export const functionHelp: FunctionTexts = {
  tasks: {
    'What fits': 'Cuánto cabe',
    'Seed for a sure stand': 'Semilla para una población segura',
    'The stand that came up': 'La población que nació',
    When: 'Cuándo',
    'Frost of your own record': 'Heladas de su propio registro',
    Heat: 'Calor',
    Soil: 'Suelo',
    'Males, females, kept apart': 'Flores, polinizadoras y separación',
    Pounds: 'Peso de la cosecha',
    Pickles: 'Encurtidos',
    Money: 'Dinero',
    'Materials and water': 'Materiales y agua',
    'Beetles and rotation': 'Escarabajos y rotación',
    'The reference': 'La referencia',
    Homework: 'Tareas escolares',
  },
  parameters: {
    row_spacing: 'Distancia entre surcos, ft (m)',
    plant_spacing: 'Distancia entre plantas en el surco, in (cm)',
    units: '"us" (si falta) o "metric"',
    length: 'Largo de la parcela, a lo largo de los surcos, ft (m)',
    width: 'Ancho de la parcela, a través de los surcos, ft (m)',
    germination: 'Fracción de semillas que germinan, sobre 0 y hasta 1, como 80%',
    field_emergence:
      'Fracción de las semillas germinables que se establecen en el campo, sobre 0 y hasta 1; si falta, 1',
    tested: 'Semillas de la prueba de germinación, enteras; cuenta con su azar y necesita una seguridad',
    seeds: 'Semillas necesarias, enteras, de 1 a 1,000,000',
    crop: 'Cultivo o nombre comercial, como "melón"',
    year: 'Año para el que es la fecha',
    pack_sizes: 'Rango de semillas por sobre, enteras, del mismo largo',
    pack_prices: 'Rango de precios en el mismo orden, con 4 decimales a lo sumo',
    all_crops: 'Rango de los cultivos o nombres comerciales de la lista de precios',
    row_length: 'Largo de todos los surcos juntos, ft (m)',
    last_frost: 'Fecha de la última helada de primavera, con su año',
    set_out: 'Día del trasplante',
    first_frost: 'Fecha de la primera helada de otoño, con su año, a lo sumo 366 días después',
    harvest_days: 'Días del primer corte al último, de 0 a 365 (0 si se corta una sola vez)',
    first: 'Fecha de la primera siembra, incluida',
    start: 'Primer día que cuenta, como el de una siembra; de cualquier año',
    first_pick: 'Día del primer corte',
    dates: 'Rango de fechas, en cualquier orden',
    highs: 'Rango de temperaturas máximas de esos días, F o C',
    lows: 'Rango de temperaturas mínimas de esos días',
    threshold: 'Temperatura de una helada; si falta, 32 F o 0 C',
    hemisphere:
      '"north" o "south"; si falta se lee de las fechas, y las heladas de la otra estación se pasan por alto',
    rule: '"inc" (si falta; como PERCENTILE.INC) o "exc" (como PERCENTILE.EXC)',
    risk: 'Fracción de primaveras con una helada posterior, sobre 0 y bajo 1, como 10%',
    base: 'Temperatura bajo la cual nada crece',
    ceiling: 'Temperatura sobre la cual más calor no ayuda; si falta, ninguna',
    method: '"mean" (si falta), "modified", "sine" o "reduced", que necesita una temperatura techo',
    target: 'Grados día buscados, sobre 0',
    soil_temperature: 'Temperatura a la profundidad de la semilla',
    share: 'Fracción de la semilla que es polinizadora, de 0 a 1, como 10%',
    jar: '"quart" (si falta) o "pint"',
    harvest_cost: 'Costo de cortar, empacar y vender una unidad; si falta, 0',
    costs_not_tied_to_yield: 'Costos que hay sea cual sea el rendimiento, sobre 0',
    wilt_prone: 'Si el tipo es propenso a la marchitez bacteriana (si falta: sí, salvo la sandía)',
    trait: 'Lo que se pregunta, como "row spacing"; CROP.TRAITS da la lista',
    function_name: 'Nombre de la función, como "SEED.NEEDED"',
    argument1: 'Primer argumento de esa función',
    argument2: 'Segundo argumento',
    argument3: 'Tercer argumento',
    argument4: 'Cuarto argumento',
    argument5: 'Quinto argumento',
    argument6: 'Sexto argumento',
    argument7: 'Séptimo argumento',
    argument8: 'Octavo argumento',
    argument9: 'Noveno argumento',
  },
  functions: {
    'PLANTS.DENSITY': {
      description:
        'Plantas por acre (o hectárea) según la distancia entre surcos y entre plantas, sin redondear.',
    },
    'PLANTS.INROWS': {
      description: 'Plantas que caben en una parcela en surcos a lo largo.',
      parameters: {
        edge: '"inset" (si falta): media distancia adentro; "onedge": primer surco y planta en el borde',
      },
    },
    'PLANTS.INHILLS': {
      description: 'Plantas que caben en una parcela en golpes, en cuadro o al tresbolillo.',
      parameters: {
        hill_spacing: 'Distancia entre golpes en el surco, ft (m)',
        plants_per_hill: 'Plantas que quedan en cada golpe, enteras, 1 o más',
        pattern: '"square" (si falta) o "staggered": un surco de cada dos, corrido media distancia',
        row_spacing:
          'Distancia entre surcos, ft (m); si falta: la de los golpes (al tresbolillo: 0.866 de ella)',
      },
    },
    'PLANTS.INBEDS': {
      description: 'Plantas que caben en una parcela en camas a lo largo, con pasillos entre ellas.',
      parameters: {
        length: 'Largo de la parcela, a lo largo de las camas, ft (m)',
        width: 'Ancho de la parcela, a través de las camas, ft (m)',
        bed_width: 'Ancho de una cama, ft (m)',
        path_width: 'Ancho de un pasillo entre dos camas, ft (m), 0 o más',
        rows_per_bed: 'Surcos de cada cama, enteros, 1 o más',
      },
    },
    'PLANTS.INAREA': {
      description:
        'Plantas que caben a lo sumo en una superficie de cualquier forma; bordes y esquinas pierden algunas.',
      parameters: {
        area: 'Superficie, ft² (m²); AREA.FROM convierte a ella acres y otras unidades',
      },
    },
    'PLANTS.FORYIELD': {
      description: 'Plantas que dan un rendimiento deseado.',
      parameters: {
        wanted_yield: 'Rendimiento deseado, en cualquier unidad de peso o en frutos, sobre 0',
        yield_per_plant: 'Lo que da una planta en su temporada, en la misma unidad, sobre 0',
      },
    },
    'AREA.FORPLANTS': {
      description: 'Superficie que pide un número de plantas; bordes y esquinas toman más.',
      parameters: { plants: 'Plantas, enteras, 1 o más' },
    },
    'AREA.FROM': {
      description:
        'Una superficie en acres, hectáreas u otra unidad, como la toman las demás funciones: ft² (m²).',
      parameters: {
        value: 'Superficie en esa unidad, sobre 0',
        unit: '"sq in", "sq ft", "sq yd", "acre", "sq mi", "sq m", "are", "hectare" o "sq km"',
        units: 'En qué se convierte: "us" (si falta) ft², o "metric" m²',
      },
    },
    'ROW.FORPLANTS': {
      description: 'Largo de surco que pide un número de plantas, con media distancia libre en cada extremo.',
      parameters: { plants: 'Plantas, enteras, 1 o más' },
    },
    'ROW.INAREA': {
      description: 'Largo de surco en una superficie, todos los surcos juntos.',
      parameters: {
        area: 'Superficie, ft² (m²); AREA.FROM convierte a ella acres y otras unidades',
      },
    },
    'ROW.FORDEMAND': {
      description: 'Largo de surco que cubre una demanda semanal durante su temporada de corte.',
      parameters: {
        wanted_per_week: 'Lo que quiere cada semana, en cualquier unidad de peso o en frutos, sobre 0',
        yield_per_100:
          'Rendimiento de toda la temporada de corte de 100 ft (100 m) de surco, en la misma unidad',
        picking_weeks: 'Semanas en que se corta el surco, sobre 0, hasta 52',
      },
    },
    'SEED.NEEDED': {
      description:
        'Semillas que sembrar para una población de plantas: en promedio, o con una seguridad de que alcancen.',
      parameters: {
        plants: 'Plantas que quiere, enteras, 1 o más',
        assurance: 'Probabilidad de que la semilla alcance, sobre 0 y bajo 1; si falta: un promedio',
      },
    },
    'SEED.PERHILL': {
      description: 'Semillas que poner en cada golpe para que nazcan bastantes plantas antes del raleo.',
      parameters: {
        plants_per_hill: 'Plantas que se dejan en un golpe, enteras, 1 o más',
        assurance: 'Probabilidad de que un golpe quede completo, sobre 0 y bajo 1; si falta, 0.9',
      },
    },
    'SEED.CHANCE': {
      description: 'Probabilidad de que la semilla sembrada dé por lo menos las plantas que quiere.',
      parameters: {
        seeds: 'Semillas sembradas, enteras, hasta 100 millones',
        plants: 'Plantas que quiere, enteras, 1 o más',
      },
    },
    'TRAY.CELLS': {
      description:
        'Celdas de bandeja que sembrar para un número de plantas de trasplante, con una planta por celda.',
      parameters: {
        plants: 'Plantas de trasplante que quiere, enteras, 1 o más',
        germination: 'Fracción de semillas que germinan, sobre 0 y hasta 1, como 85%',
        seeds_per_cell: 'Semillas por celda, enteras; si falta, 1',
        culls: 'Fracción de las celdas con planta que se descartan, de 0 a menos de 1; si falta, 0',
        assurance: 'Probabilidad de que alcancen, sobre 0 y bajo 1; si falta: un promedio',
      },
    },
    'TRAY.COUNT': {
      description: 'Bandejas que contienen un número de celdas.',
      parameters: {
        cells: 'Celdas que sembrar, enteras, 1 o más, como las da TRAY.CELLS',
        cells_per_tray: 'Celdas de una bandeja, enteras, como 72',
      },
    },
    'TRAY.MIX': {
      description: 'Sustrato que llena un número de celdas, tal como queda en ellas.',
      parameters: {
        cells: 'Celdas que llenar, enteras, 1 o más',
        cell_volume: 'Volumen de una celda, in³ (ml), según el fabricante de la bandeja',
      },
    },
    'SEED.WEIGHT': {
      description: 'Peso de un número de semillas, en onzas (gramos).',
      parameters: {
        seeds: 'Número de semillas, 0 o más',
        seeds_per_unit: 'Semillas por oz (por g), según el sobre',
      },
    },
    'SEED.STANDARD': {
      description:
        'Norma federal de germinación de la semilla de un cultivo; bajo ella se vende marcada "Below Standard".',
    },
    'SEED.TEST': {
      description:
        'Germinación que muestra una prueba, con el extremo bajo y el alto de la que puede tener el lote, en una fila.',
      parameters: {
        germinated: 'Semillas que germinaron, enteras, de 0 a todas las probadas',
        tested: 'Semillas de la prueba, enteras, 1 o más; lo usual es 400',
        confidence:
          'Probabilidad de que los dos extremos encierren la germinación del lote, sobre 0 y bajo 1; si falta, 0.95',
      },
    },
    'SEED.TOLERANCE': {
      description:
        'Mayor diferencia entre repeticiones de 100 semillas antes de repetir una prueba federal de germinación.',
      parameters: {
        mean: 'Germinación media de las repeticiones, de 70% a 99%; se redondea al por ciento entero',
        replicates: 'Repeticiones de 100 semillas, 4 o 2',
      },
    },
    'SEED.STORAGELEFT': {
      description:
        'Años que la semilla guardada debería durar aún, por la más corta de las vidas publicadas; pruébela antes de usarla.',
      parameters: {
        year_packed: 'Año del sobre, como 2024',
        year: 'Año de siembra, no anterior al del sobre',
      },
    },
    'SEED.PACKS': {
      description:
        'Los sobres más baratos con por lo menos las semillas necesarias: una fila por tamaño que comprar, y el total.',
      parameters: {
        pack_sizes: 'Rango de semillas por sobre, enteras, de 20 sobres a lo sumo',
      },
    },
    'SEED.PACKCOST': {
      description:
        'Costo de los sobres más baratos de un cultivo, de una lista de precios de todos, con las semillas necesarias.',
    },
    'SEED.PACKLIST': {
      description: 'Los sobres cuyo costo da SEED.PACKCOST, como texto: cuántos de cada tamaño.',
    },
    'STAND.COUNT': {
      description:
        'Fracción de la población prevista que nació, por las plantas contadas en un largo de surco.',
      parameters: {
        plants_standing: 'Plantas contadas, 0 o más; una media de conteos puede tener decimales',
        row_length: 'Largo de surco en que se contaron, con sus fallas, ft (m)',
        plant_spacing: 'Distancia prevista entre plantas en el surco, in (cm)',
      },
    },
    'STAND.REPLANT': {
      description: 'Si conviene dejar la población como está, resembrar las fallas, o ya es tarde para ello.',
      parameters: {
        stand: 'Fracción de la población prevista, de 0 a 2, como la da STAND.COUNT',
        today: 'Fecha de la decisión',
        last_planting: 'Última fecha de siembra, como la que da DATE.LASTSOWING',
        least_stand:
          'Fracción que vale la pena dejar como está, sobre 0 y hasta 1; si falta, 0.75 (criterio nuestro)',
      },
    },
    'DATE.SETOUT': {
      description: 'Día de trasplantar, contado desde la última helada; decide el suelo cálido.',
      parameters: {
        last_frost: 'Fecha media de la última helada de primavera',
        days_after: 'Días que esperar después de ella, de -60 a 120 (si falta, 14)',
      },
    },
    'DATE.STARTTRANSPLANTS': {
      description: 'Día de sembrar para trasplante, contado hacia atrás desde el trasplante.',
      parameters: {
        weeks: 'Semanas que tardan en criarse, de 0 a 26 (si falta, 3; varía por cultivo)',
      },
    },
    'DATE.HARDENOFF': {
      description: 'Día de empezar a endurecer las plantas de trasplante, no bajo cerca de 60 F (16 C).',
      parameters: { days: 'Días de endurecimiento, de 0 a 60 (si falta, 7)' },
    },
    'DATE.FIRSTSOWING': {
      description:
        'Primer día de sembrar al aire libre, contado desde la última helada; decide el suelo cálido.',
      parameters: {
        last_frost: 'Fecha media de la última helada de primavera',
        days_after: 'Días que esperar después de ella, de -60 a 120 (si falta, 7)',
      },
    },
    'DATE.LASTSOWING': {
      description: 'Último día de sembrar para una cosecha completa antes de la primera helada.',
      parameters: {
        first_frost: 'Fecha de la primera helada de otoño',
        days_to_maturity: 'Días de la siembra al primer corte, sobre 0, hasta 365',
        harvest_days:
          'Días del primer corte al último, de 0 a 365 (si falta, 21; 0 si se corta una sola vez)',
        fall_days:
          'Días que se suman por el crecimiento más lento al acortarse los días, de 0 a 90 (si falta, 14)',
        frost_margin:
          'Días antes de la helada en que un cultivo sensible debe haber terminado, de 0 a 90 (si falta, 14)',
      },
    },
    'DATE.SUCCESSION': {
      description: 'Fechas para sembrar una y otra vez, una debajo de otra, ninguna después de la última.',
      parameters: {
        last: 'Fecha después de la cual no hay siembra, como la que da DATE.LASTSOWING',
        every_days: 'Días de una siembra a la siguiente, enteros, de 1 a 365',
      },
    },
    'DATE.FIRSTPICK': {
      description: 'Día del primer corte, desde la siembra o desde el trasplante.',
      parameters: {
        start: 'Día de la siembra o del trasplante',
        days_to_maturity: 'Días a cosecha según el sobre, sobre 0, hasta 365',
        method: 'Qué es el comienzo: "seed" (si falta) o "transplant"',
        basis: 'Desde qué cuenta el sobre: "seed" (si falta) o "transplant"',
        transplant_gain: 'Días que un trasplante va delante de la semilla, de 0 a 60 (si falta, 10)',
        fall_days:
          'Días que se suman por el crecimiento más lento al acortarse los días, de 0 a 90 (si falta, 0)',
      },
    },
    'DATE.LASTPICK': {
      description:
        'Día del último corte: el fin de la cosecha, o la víspera de la helada si esta viene antes.',
      parameters: {
        first_frost: 'Fecha de la primera helada de otoño (si falta: ninguna helada estorba)',
      },
    },
    'DATE.COVEROFF': {
      description:
        'Día de quitar la cubierta, antes de que abran las flores femeninas; guíese por las flores, no por esta fecha.',
      parameters: {
        crop: 'Nombre del cultivo, como "pepino" o "calabacín"',
        flower_to_pick: 'Días de la flor femenina al corte, de 0 a 120 (si falta: los del cultivo)',
        flower_type:
          'Tipo de flor de la variedad (si falta: el del cultivo); "parthenocarpic" puede seguir cubierto',
      },
    },
    'DATE.AFTERSPRAY': {
      description:
        'Primer día en que se puede cortar después de una aplicación, por los días a cosecha de la etiqueta.',
      parameters: {
        spray_date: 'Día de la última aplicación',
        label_days: 'Días a cosecha de la etiqueta de lo que se aplicó, de 0 a 365',
      },
    },
    'DATE.AFTERMANURE': {
      description:
        'Primer día de cosecha tras estiércol crudo, por la norma orgánica de EE. UU.; otras normas pueden pedir más.',
      parameters: {
        manure_date: 'Día en que se incorporó el estiércol crudo al suelo',
        touches_soil: 'TRUE si el fruto toca el suelo (120 días), FALSE si no (90)',
      },
    },
    'SEASON.DAYS': {
      description: 'Días entre la última helada y la primera que le sigue, también al pasar de año.',
    },
    'SEASON.SPARE': {
      description: 'Días que sobran entre las heladas; negativos si la temporada es demasiado corta.',
      parameters: { days_needed: 'Días de la última helada al último corte, de 0 a 730' },
    },
    'FROST.LASTDATES': {
      description:
        'Última helada de cada primavera de un registro diario: años en la primera columna, fechas en la segunda.',
      parameters: {
        dates: 'Rango de fechas, una por día, en cualquier orden',
        units: '"us" (F, si falta) o "metric" (C)',
        hemisphere: '"north" (si falta) o "south"',
      },
    },
    'FROST.FIRSTDATES': {
      description:
        'Primera helada de cada otoño de un registro diario: años en la primera columna, fechas en la segunda.',
      parameters: {
        dates: 'Rango de fechas, una por día, en cualquier orden',
        units: '"us" (F, si falta) o "metric" (C)',
        hemisphere: '"north" (si falta) o "south"',
      },
    },
    'FROST.YEARS': {
      description:
        'Temporadas de un registro diario: año, última helada de primavera, primera de otoño y días sin helada entre ellas.',
      parameters: {
        dates: 'Rango de fechas, una por día, en cualquier orden',
        units: '"us" (F, si falta) o "metric" (C)',
        hemisphere: '"north" (si falta) o "south"',
      },
    },
    'FROST.SPRINGDATE': {
      description: 'Fecha después de la cual aún hiela en una fracción de todas las primaveras.',
      parameters: {
        last_dates: 'Rango de últimas heladas, una por primavera, o las dos columnas de FROST.LASTDATES',
      },
    },
    'FROST.FALLDATE': {
      description: 'Fecha antes de la cual ya hiela en una fracción de todos los otoños.',
      parameters: {
        first_dates: 'Rango de primeras heladas, una por otoño, o las dos columnas de FROST.FIRSTDATES',
        risk: 'Fracción de otoños con una helada anterior, sobre 0 y bajo 1, como 10%',
      },
    },
    'FROST.CHANCE': {
      description:
        'Fracción de temporadas con una helada después de una fecha de primavera, o antes de una de otoño.',
      parameters: {
        date: 'Fecha de cualquier año',
        frost_dates: 'Rango de últimas heladas (primavera) o primeras (otoño), una por temporada',
        season: '"spring" (primavera) o "fall" (otoño)',
      },
    },
    'HEAT.DAY': {
      description: 'Calor de un día en grados día, en la escala de las temperaturas.',
      parameters: {
        high: 'Temperatura máxima del día, F o C',
        low: 'Temperatura mínima del día, no sobre la máxima',
        base: 'Temperatura bajo la cual nada crece, como 50 F o 10 C',
      },
    },
    'HEAT.SUM': {
      description: 'Calor de varios días seguidos en grados día; un día sin dato se nombra y no da suma.',
      parameters: {
        highs: 'Rango de temperaturas máximas, una por día, F o C',
        lows: 'Rango de temperaturas mínimas de los mismos días',
      },
    },
    'HEAT.DATE': {
      description: 'Día en que el calor desde un comienzo llega a una meta, incluido el calor de ese día.',
      parameters: { start: 'Primer día que cuenta, como el de la siembra' },
    },
    'HEAT.YEARS': {
      description:
        'Calor de los mismos días en cada año de un registro: años en la primera columna, grados día en la segunda.',
      parameters: { days: 'Días que cuentan, de 1 a 366' },
    },
    'HEAT.DATES': {
      description:
        'Día en que el calor desde un comienzo llega a una meta, en cada año de un registro: año, fecha y días desde el comienzo.',
    },
    'HEAT.SUCCESSION': {
      description:
        'Fechas de siembra con igual calor entre ellas, una debajo de otra, ninguna después de la última.',
      parameters: {
        last: 'Fecha después de la cual no hay siembra',
        heat_between: 'Grados día de una siembra a la siguiente, sobre 0',
      },
    },
    'SOIL.RANGE': {
      description:
        'Temperaturas de suelo de un cultivo en una fila: mínima, ambos extremos de la óptima, máxima y la de siembra.',
      parameters: { units: '"us" (F, si falta) o "metric" (C)' },
    },
    'EMERGENCE.DAYS': {
      description: 'Días de la siembra a la emergencia en suelo de temperatura constante.',
      parameters: {
        crop: 'Pepino, melón o sandía, o un nombre comercial de ellos',
        units: '"us" (F, si falta) o "metric" (C)',
      },
    },
    'EMERGENCE.PERCENT': {
      description: 'Fracción de la semilla que da plántulas normales en suelo de temperatura constante.',
      parameters: {
        crop: 'Pepino, melón o sandía, o un nombre comercial de ellos',
        units: '"us" (F, si falta) o "metric" (C)',
      },
    },
    'FLOWER.FEMALESHARE': {
      description:
        'Fracción de flores femeninas entre plantas ginoicas y sus polinizadoras, si todas florecen por igual.',
      parameters: {
        pollenizer_share: 'Fracción de plantas que son polinizadoras, de 0 a 1',
        monoecious_female:
          'Fracción femenina de las flores de una planta monoica, de 0 a 1; por costumbre cerca de 0.5',
        gynoecious_female: 'Lo mismo de una planta ginoica, de 0 a 1 (si falta, 1)',
      },
    },
    'FLOWER.MALESPERFEMALE': {
      description: 'Flores masculinas por cada femenina, según la fracción de flores femeninas.',
      parameters: { female_share: 'Fracción de flores femeninas, sobre 0 y hasta 1' },
    },
    'FLOWER.SHARE': {
      description:
        'Una proporción de polinizadoras y demás plantas como fracción de todas: 1 por 3 es 25%, no 33%.',
      parameters: {
        pollenizers: 'Polinizadoras de la proporción, 0 o más',
        others: 'Demás plantas de la proporción, 0 o más',
      },
    },
    'FLOWER.POLLENIZERS': {
      description: 'Plantas polinizadoras que poner para que su fracción se cumpla tras las pérdidas.',
      parameters: {
        plants: 'Todas las plantas, o solo las sin semilla cuando la disposición es "between"',
        share: 'Fracción de todas las plantas en pie que deben ser polinizadoras, de 0 a 1',
        losses: 'Fracción de polinizadoras que se perderá, de 0 a menos de 1 (si falta, 0)',
        layout: '"dedicated": en lugares entre las plantas (si falta); "between": intercaladas',
      },
    },
    'FLOWER.NOPOLLENIZER': {
      description:
        'Probabilidad de que un grupo de plantas de semilla mezclada no tenga ninguna polinizadora.',
      parameters: { plants: 'Plantas del grupo, enteras, 1 o más' },
    },
    'FLOWER.GROUPSIZE': {
      description: 'Menor número de plantas de semilla mezclada entre las que hay una polinizadora.',
      parameters: {
        share: 'Fracción de la semilla que es polinizadora, sobre 0 y hasta 1, como 10%',
        assurance: 'Probabilidad de que el grupo tenga una, sobre 0 y bajo 1; si falta, 0.95',
      },
    },
    'FLOWER.HIVES': {
      description:
        'Colmenas de abejas para un campo; dé 0 por acre al pepino partenocárpico y más a la sandía triploide.',
      parameters: {
        area: 'Superficie en ft² (m²); un acre son 43,560 ft²',
        hives_per_acre: 'Colmenas por acre (por hectárea), 0 o más; si falta, 1 (2.47)',
      },
    },
    'FLOWER.ISOLATE': {
      description:
        'Si una parcela debe apartarse del polen o le falta una polinizadora: "clear", o qué hacer.',
      parameters: {
        crop: 'Cultivo o nombre comercial de la parcela',
        flower_type: 'Su tipo de flor; en blanco, el del cultivo',
        all_crops: 'Rango de todos los cultivos que crecen juntos, también este',
        all_flower_types: 'Rango de sus tipos de flor, del mismo largo; en blanco, el de cada cultivo',
        screened: 'TRUE si hay malla contra abejas (si falta, FALSE)',
      },
    },
    'FLOWER.CROSSES': {
      description:
        'Si dos cultivos se cruzan, y qué significa para el fruto de este año y para la semilla guardada.',
      parameters: {
        crop_a: 'Cultivo o nombre comercial, como "calabacín"',
        crop_b: 'Cultivo o nombre comercial del otro',
        saving_seed: 'TRUE si se va a guardar semilla (si falta, FALSE)',
      },
    },
    'HARVEST.YIELD': {
      description: 'Rendimiento de un largo de surco, a partir del de 100 ft (o 100 m) de surco.',
      parameters: {
        yield_per_100: 'Rendimiento de 100 ft (100 m) de surco, en cualquier unidad',
        marketable:
          'Fracción que se puede vender, de 0 a 1 (si falta, 1: los rendimientos publicados ya son comerciales)',
      },
    },
    'HARVEST.PICKS': {
      description: 'Veces que se corta una siembra, contado el primer corte.',
      parameters: {
        last_pick: 'Día del último corte, no anterior al primero',
        every_days: 'Días de un corte al siguiente, de 0.5 a 366',
      },
    },
    'HARVEST.FORECAST': {
      description: 'Cosecha que cuelga de las plantas, por los frutos contados en algunas.',
      parameters: {
        fruit_per_plant: 'Frutos contados por planta, en promedio, 0 o más',
        plants: 'Plantas en pie, enteras, 1 o más',
        fruit_weight: 'Peso de un fruto al tamaño de corte, en cualquier unidad',
      },
    },
    'HARVEST.BUSHELS': {
      description: 'Bushels que hay en un peso de fruta; los pesos legales varían por estado.',
      parameters: {
        pounds: 'Peso, lb, 0 o más',
        crop: 'Cultivo o nombre comercial, como "pepino"',
      },
    },
    'HARVEST.SIZE': {
      description: 'Si un fruto tiene el tamaño de corte.',
      parameters: {
        size: 'Largo de un pepino o zucchini, diámetro de una calabaza o de un patisson, in (cm)',
        crop: 'Cultivo o nombre comercial, como "calabacín"',
        use: '"fresh" (fresco) o "pickles" (encurtir); si falta: para lo que se cultiva',
      },
    },
    'PICKLE.JARS': {
      description:
        'Frascos de encurtidos de pepino que da un peso, y los menos que da; envase con una receta probada y vigente.',
      parameters: { pounds: 'Pepinos frescos, lb' },
    },
    'PICKLE.POUNDS': {
      description:
        'Pepinos para unos frascos de encurtidos, y los más que piden; envase con una receta probada y vigente.',
      parameters: { jars: 'Frascos que llenar, enteros, 1 o más' },
    },
    'BUDGET.RETURN': {
      description: 'Lo que queda sobre los costos: los variables, o todos.',
      parameters: { income: 'Ingreso, 0 o más', costs: 'Costos juntos, 0 o más' },
    },
    'BUDGET.BREAKEVENPRICE': {
      description: 'Precio al que un rendimiento paga su costo.',
      parameters: {
        total_cost: 'Costo de cultivar, cosechar y vender ese rendimiento, sobre 0',
        total_yield: 'Rendimiento que se vende, sobre 0',
      },
    },
    'BUDGET.BREAKEVENYIELD': {
      description: 'Rendimiento que paga los costos, cuando cada unidad cuesta algo en cosecha y venta.',
      parameters: { price: 'Precio de una unidad, sobre 0' },
    },
    'BUDGET.SENSITIVITY': {
      description:
        'Lo que queda con cada rendimiento, hacia abajo, y cada precio, a lo ancho; ambos encabezan la tabla.',
      parameters: {
        prices: 'Rango de precios de una unidad, 100 a lo sumo',
        yields: 'Rango de rendimientos, 100 a lo sumo',
        costs_not_tied_to_yield: 'Costos que hay sea cual sea el rendimiento, 0 o más',
      },
    },
    'BUDGET.PICKHOURS': {
      description: 'Horas de una persona para cortar unos surcos una y otra vez.',
      parameters: {
        picks: 'Veces que se cortan, enteras, como las da HARVEST.PICKS',
        rate: 'Surco que corta una persona en una hora, ft (m)',
      },
    },
    'SUPPLY.HILLSOIL': {
      description: 'Tierra que arrimar para formar montículos.',
      parameters: {
        hills: 'Montículos, enteros, 1 o más',
        diameter: 'Diámetro de un montículo en su base, in (cm)',
        height: 'Altura de un montículo, in (cm), a lo sumo la mitad del diámetro',
        shape: '"mound" (loma; si falta) o "disc" (disco)',
      },
    },
    'SUPPLY.FERTILIZER': {
      description:
        'Fertilizante para un campo, por la dosis de un nutriente y la fórmula del saco; analice antes el suelo.',
      parameters: {
        area: 'Superficie en ft² (m²); un acre son 43,560 ft²',
        rate: 'Nutriente que quiere: N, P2O5 o K2O, lb por acre (kg por hectárea)',
        grade: 'Fracción de ese nutriente en el fertilizante, como 5% de N en 5-10-10',
      },
    },
    'SUPPLY.WATER': {
      description: 'Agua que pone una lámina sobre una superficie.',
      parameters: {
        area: 'Superficie regada, ft² (m²); un acre son 43,560 ft²',
        depth: 'Lámina de agua, in (mm)',
      },
    },
    'SUPPLY.WATERNEED': {
      description: 'Lámina de agua que un cultivo gasta más allá de la lluvia.',
      parameters: {
        reference_et:
          'Evapotranspiración de referencia de un día, ET0, de una estación meteorológica; in o mm',
        crop_coefficient:
          'Kc del cultivo en su etapa, cerca de 0.5 al principio, 1 a media temporada; a lo sumo 2',
        days: 'Días, sobre 0; si falta, 1',
        rain: 'Lluvia de esos días, en la misma lámina; si falta, 0; bajo acolchado plástico, omítala',
      },
    },
    'SUPPLY.DRIPRUNTIME': {
      description:
        'Horas que debe correr la cinta de goteo para regar una cama; divida un riego de más de 6.',
      parameters: {
        depth: 'Lámina de agua sobre el ancho mojado, in (mm)',
        wetted_width: 'Ancho de la cama que se moja, in (cm)',
        flow: 'Caudal de una línea, galones por hora y 100 ft (litros por hora y m), según el fabricante',
        lines: 'Líneas de cinta en la cama, enteras; si falta, 1',
      },
    },
    'SUPPLY.COVER': {
      description: 'Largo de cubierta o de acolchado, con lo que se entierra en los extremos.',
      parameters: {
        rows: 'Surcos o camas cubiertos, enteros, 1 o más',
        row_length: 'Largo de un surco, ft (m)',
        end_tuck: 'Largo enterrado en un extremo, 0 o más, ft (m)',
      },
    },
    'SUPPLY.TRELLIS': {
      description: 'Postes para surcos con espaldera, uno en cada extremo.',
      parameters: {
        row_length: 'Largo de un surco, ft (m)',
        post_spacing: 'Mayor distancia entre postes, ft (m)',
        rows: 'Surcos de ese largo, enteros; si falta, 1',
      },
    },
    'BEETLE.THRESHOLD': {
      description:
        'Escarabajos rayados por planta con los que hay que actuar; la etiqueta y la oficina de extensión dicen cómo.',
      parameters: { crop: 'Cultivo o nombre comercial, como "calabacín"' },
    },
    'BEETLE.VERDICT': {
      description:
        'Si los escarabajos contados en algunas plantas llegan al umbral, y si se miraron bastantes plantas.',
      parameters: {
        beetles: 'Escarabajos contados en todas esas plantas, enteros, 0 o más',
        plants: 'Plantas miradas, enteras; 25 o más por todo el campo',
        crop: 'Cultivo o nombre comercial, como "pepino"',
        stage: '"cotyledon" (cotiledón), "seedling" (hasta unas 5 hojas verdaderas) u "older" (mayor)',
      },
    },
    'ROTATION.YEARS': {
      description:
        'Temporadas completas que el terreno lleva sin cucurbitáceas; cuentan todas, también calabacín tras pepino.',
      parameters: {
        year: 'Año de siembra, como 2027',
        past_years: 'Rango de los años en que hubo allí cucurbitáceas, cada uno anterior',
      },
    },
    'CROP.VALUE': {
      description:
        'Una cifra de la referencia para un cultivo, como su distancia entre surcos o sus días a cosecha.',
      parameters: {
        crop: 'Cultivo o nombre comercial, como "calabacín"; CROP.LIST da los nombres',
        bound: '"low" (bajo), "mid" (medio; si falta) o "high" (alto) del rango',
      },
    },
    'CROP.NAME': {
      description: 'El cultivo de la referencia que corresponde a un nombre comercial.',
      parameters: {
        crop: 'Cultivo o nombre comercial, como "calabacín"; mayúsculas y espacios como vengan',
      },
    },
    'CROP.SOURCE': {
      description: 'De dónde viene una cifra de la referencia, o que no tiene fuente.',
      parameters: { crop: 'Cultivo o nombre comercial; CROP.LIST da los nombres' },
    },
    'CROP.LIST': {
      description: 'Los nombres de todos los cultivos de la referencia, uno debajo de otro.',
    },
    'CROP.TRAITS': {
      description: 'Los nombres de todo lo que la referencia sabe de los cultivos, uno debajo de otro.',
    },
    'CHECK.ANSWER': {
      description: 'Si una respuesta es correcta, o por cuánto falla y hacia dónde.',
      parameters: {
        answer: 'Respuesta que revisar: un número, una fecha o una palabra',
        correct: 'La correcta, como una fórmula con una de estas funciones',
        tolerance:
          'Fracción en que puede fallar, de 0 a 1 (si falta: enteros y fechas exactos, los demás 0.5%)',
      },
    },
    'CHECK.WORKING': {
      description:
        'Pasos de un cálculo, uno por fila: cantidad, valor, unidad, fórmula, números puestos, redondeo o fuente.',
    },
    'CHECK.SLIP': {
      description:
        '"right", o el error que da justo esa respuesta equivocada, en palabras; si no, por cuánto falla.',
      parameters: {
        answer:
          'Respuesta que revisar: un número, una fecha o una palabra; de una fila de resultados, el primero',
        function_name: 'Nombre de la función que da la correcta, como "SEED.NEEDED"',
      },
    },
  },
};
