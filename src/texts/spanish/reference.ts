/** In Spanish: what is said of the reference. */
import type { Translated } from '../translated';

export const citations: Translated['citations'] = {
  dated: '{publisher}: {title} ({year}), {where}',
  undated: '{publisher}: {title} (sin fecha), {where}',
  read: '',
  'secondary copy': '; leído en una copia de segunda mano',
  'from memory, check': '; de memoria, por verificar',
  and: '; ',
  note: '. {note}',
  grounds: {
    'common practice, no source': 'práctica común, sin fuente',
    judgement: 'criterio nuestro',
    convention: 'convención del proyecto, sin fuente',
    arithmetic: 'aritmética, sin fuente',
    geometry: 'geometría plana o del espacio, sin fuente',
    units: 'definición de las unidades',
    'independent seeds':
      'distribución binomial, por su definición: se toma que cada semilla nace por sí sola',
    'own list': 'lista de este proyecto',
  },
};

export const cropNotes: Translated['cropNotes'] = {
  asSeededWatermelon: 'Se toma que necesita el espacio de la sandía con semilla.',
  asSquash: 'Se toma como calabaza.',
  bearsLonger: 'Las plantas dan más tiempo donde la helada y el oídio lo permiten.',
  bushCucumberSpacing:
    'Lo común en tipos arbustivos es 2 a 3 ft por planta; Illinois planta todos los pepinos a 12 in.',
  countYourLot: 'El tamaño de la semilla varía mucho entre lotes y fuentes: pese 100 de las suyas.',
  cucumberDaysByRegion: 'Carolina del Norte cuenta 36 a 45 días, Dakota del Norte 60 a 70.',
  cucumberSeedCount: 'Nueve líneas contadas iban de 904 a 1,291 por onza.',
  cucumberSpacing: 'Práctica común, sin fuente: surcos a 4 a 5 ft, 12 a 18 in en el surco.',
  gourdDays: 'Pequeñas de adorno cerca de 90, de cáscara dura cerca de 120, luffa cerca de 130.',
  keepsBySlip:
    'Desprendido a medias o tres cuartos: 36 a 45 °F, 1 a 2 semanas. Del todo: 32 a 40 °F, 4 a 7 días. Tipos tardíos como casaba: no bajo 50 °F (10 °C).',
  keepsByType:
    'Según el tipo; los de bellota los que menos, unas 5 a 8 semanas por práctica común, sin fuente. No bajo 50 °F (10 °C).',
  noTriploidLine: 'El reglamento no tiene renglón propio para semilla triploide.',
  pickedDaily: 'Lo común, sin fuente, es cortar casi a diario.',
  picklingSize: 'De pepinillo a tamaño de encurtir. Lo común, sin fuente, es 3 a 5 in.',
  pumpkinBins: 'Diámetro de los tamaños de cajón propuestos, de mediano a gigante; corte por la madurez.',
  pumpkinOptimum:
    'La tabla imprime un solo óptimo de 95 °F (35 °C), fuera de su propio rango; se da el rango.',
  readThePacket: 'También se venden tipos ginoicos y partenocárpicos: lea el sobre.',
  ripeBeforeFreeze:
    'El fruto maduro se corta al fin de la temporada y aguanta una helada ligera, no una fuerte.',
  slicingSize: 'Los grados altos de EE. UU. empiezan en 6 in; lo común, sin fuente, son unas 8 in.',
  squareHills: 'Se toman golpes a igual distancia a lo ancho que a lo largo.',
  squashChilled: 'Por debajo de 45 °F (7 °C) el frío la daña en 2 a 3 días.',
  squashYield:
    'Extremo bajo Texas, 10,000 lb por acre en surcos a 4 ft; extremo alto Florida, 15 lb por surco de 10 ft.',
  watermelonYield: '10,000 a 70,000 lb por acre en surcos a 8 ft: un rango muy ancho, ponga el suyo.',
  yieldAt5FtRows: 'De rendimientos por acre en surcos a 5 ft.',
  yieldAt6FtRows: 'De rendimientos por acre en surcos a 6 ft.',
  yieldAt8FtRows: 'De rendimientos por acre en surcos a 8 ft.',
};

export const cautions: Translated['cautions'] = {
  bitterFruit:
    'No coma ninguna cucurbitácea que sepa amarga: escúpala y tire el fruto. Las calabazas de adorno y las plantas voluntarias no son alimento. La semilla guardada donde se cruzaron tipos puede dar fruto amargo el año siguiente.',
  treatedSeed:
    'La semilla tratada no es para alimento, forraje ni aceite, y la que sobra no va a la composta. Use guantes y lea en la etiqueta con qué está tratada y cómo desecharla.',
  pesticides:
    'La etiqueta es la ley: dosis, días a cosecha y protección están allí y en ninguna parte aquí. Pregunte a su oficina local de extensión qué está registrado para su cultivo, y cuide las abejas: aplique al atardecer, con las flores cerradas.',
  canning:
    'Los pesos de aquí sirven para planear el corte, no el frasco. Haga conservas con una receta probada y vigente de su oficina de extensión o de la guía del USDA, con sus tiempos, y nunca puré de calabaza.',
  mildew:
    'Contra oídio (cenicilla) y mildiu elija tipos resistentes, deje espacio y aire entre plantas y riegue el suelo, no las hojas. Qué más ayuda depende del lugar y de la semana: pregunte a su oficina local de extensión.',
  history:
    'Lo que hubo antes en una parcela solo lo sabe usted: un blanco en Últimas cucurbitáceas quiere decir que no se sabe, nunca que no hubo.',
};

/** "clear" is a word of the function, which a sheet can test for. */
export const verdicts: Translated['verdicts'] = {
  clear: 'clear',
  'pollen on the sheet':
    'Separar: este pepino partenocárpico da fruto con semilla y deforme si las abejas traen polen de pepino, y otros pepinos de aquí lo tienen. Protéjalo con malla o mueva unos u otros; cuente también con los vecinos.',
  'pollen next door':
    'Ningún otro pepino de aquí trae polen, pero los vecinos quizá: las abejas harían que este pepino partenocárpico dé fruto con semilla y deforme. Protéjalo de las abejas.',
  'no pollenizer':
    'No cuaja sin polen de una sandía con semilla, y ninguna otra parcela lo es: plante polinizadoras entre ella, cerca de 1 por cada 3.',
};

/** Words of the function. */
export const standVerdicts: Translated['standVerdicts'] = {
  keep: 'keep',
  'fill gaps': 'fill gaps',
  'too late': 'too late',
};

export const judgements: Translated['judgements'] = {
  right: 'correcto',
  blank: 'en blanco: aún sin respuesta',
  tooHigh: 'demasiado alto por {difference}',
  tooLow: 'demasiado bajo por {difference}',
  share: ' ({percent} %)',
  late: ' (de fechas: {difference} {difference|día|días} tarde)',
  early: ' (de fechas: {difference} {difference|día|días} antes)',
  numberWanted: 'incorrecto: se pide un número, o una fecha como 2026-05-16',
  wordWanted: 'incorrecto: se pide una palabra',
  otherWord: 'incorrecto: se pide otra palabra',
};

export const crossings: Translated['crossings'] = {
  cross: 'Se cruzan: ambos son {species}.',
  'may cross': 'Se cruzan donde ambos son de una misma especie ({species}): léala en el sobre.',
  'seldom cross': 'Rara vez se cruzan: son especies distintas de calabaza.',
  'do not cross': 'No se cruzan: son especies distintas.',
  seedless:
    'Ambas son {species}, pero la sandía triploide no da semilla que valga la pena guardar ni buen polen; necesita el polen de la otra para cuajar.',
  or: ' o ',
  fruitUnaffected: 'El fruto de este año no cambia.',
  fruitSpoiled:
    'El polen hace que los pepinos partenocárpicos de este año tengan semilla y se deformen: manténgalos lejos de las abejas.',
  seedWouldMix: 'La semilla que se guarde de ellos saldría mezclada.',
  keepPure:
    'La semilla que se guarde de ellos sale mezclada, salvo que proteja las flores de las abejas y las polinice a mano.',
  bitter:
    'El fruto de semilla guardada de Cucurbita pepo puede ser amargo y enfermar: si sabe amargo, escúpalo y no lo coma.',
};

export const orders: Translated['orders'] = { total: 'total', packs: '{count} de {size}', and: ', ' };

/** Words of the function. */
export const sizeVerdicts: Translated['sizeVerdicts'] = { under: 'under', ready: 'ready', over: 'over' };

export const ripeness: Translated['ripeness'] = {
  hardRind: 'la cáscara tenga todo su color y la uña no la raye',
  dryStem: 'el pedúnculo se seque y se ponga café',
  slips:
    'se desprenda de la guía con un tirón ligero, con la red áspera y el color de fondo de canela a amarillo',
  groundSpot:
    'la mancha donde se apoya pase de crema a amarillo, se apague el brillo y el zarcillo más cercano esté café y seco',
};

export const budgets: Translated['budgets'] = { corner: 'rendimiento \\ precio' };

export const beetles: Translated['beetles'] = {
  below: 'Bajo el umbral: {mean} por planta, el umbral es {threshold}.',
  atThreshold: 'En el umbral: {mean} por planta, el umbral es {threshold}.',
  older: 'Las plantas con más de unas 5 hojas soportan más daño.',
  tooFew: 'Se revisaron muy pocas plantas: revise {least} o más por todo el campo.',
};

/** A word of the function. */
export const rotation: Translated['rotation'] = { noneOnRecord: 'none on record' };
