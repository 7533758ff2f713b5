/** The reference on every crop in sentences, for looking at crops side by side. */
import { inMetric } from '../calc/units/inMetric';
import type { Unit } from '../calc/units/units';
import { sayGround } from '../functions/citation';
import { sayNumber, sayUnit } from '../functions/wording';
import { beetleThresholds, wiltProneCrops } from '../reference/beetles';
import { bushelKinds, bushelWeights } from '../reference/bushels';
import { chosenFor, troubles } from '../reference/cropGuide';
import { crops, traits, type Crop, type Trait } from '../reference/crops';
import { picklingCrops, picklingSize, ripenessSigns } from '../reference/pickingSizes';
import { seedLife } from '../reference/seedLife';
import { seedKinds } from '../reference/seedStandards';
import { unsourcedGrounds } from '../reference/sources';
import { catalogue } from '../texts/catalogue';
import { guide } from '../texts/guide';
import { language } from '../texts/language';
import { fill } from '../texts/fill';

const words = guide.crops;
const { headings } = words;

/** One thing that is said of a crop. */
interface Said {
  readonly text: string;
  /** A remark on it, and that it has no source; "" for neither. */
  readonly remark: string;
  /** Publications; "" where there is none. */
  readonly source: string;
}

const unsourced: ReadonlySet<string> = new Set(unsourcedGrounds);
const { traits: traitHeadings, values: wordFigures } = catalogue.sheets.crops;
const traitNames = Object.keys(traits) as Trait[];

/** @param system of the figures; publications are in their own */
export function cropGuide(system: 'us' | 'metric') {
  const isMetric = system === 'metric';
  return {
    /** In the order in which they stand under one another. */
    headings: [
      headings.uses,
      headings.picking,
      headings.trouble,
      ...traitNames.map((trait) => traitHeadings[trait]),
      ...others,
    ],
    crops: crops.map((crop) => ({
      name: crop.name,
      otherNames: otherNamesOf(crop),
      uses: usesOf(crop).map(({ use }) => words.uses[use]),
      said: saidOf(crop, isMetric),
    })),
    uses: Object.values(words.uses),
    cautions: (['bitterFruit', 'treatedSeed', 'pesticides', 'canning'] as const).map(
      (name) => catalogue.cautions[name],
    ),
  };
}

/** Those of the language first, without the one that stands for the crop. */
function otherNamesOf({ synonyms, spanishNames }: Crop): readonly string[] {
  if (language !== 'es') return synonyms;
  const [, ...names] = spanishNames;
  return [...names, ...synonyms.filter((name) => !spanishNames.includes(name))];
}

const others = [headings.seedLife, headings.bushel, headings.beetles];

/** By heading; nothing is missing but what the reference has no word on. */
function saidOf(crop: Crop, isMetric: boolean): Readonly<Record<string, readonly Said[]>> {
  return {
    [headings.uses]: usesOf(crop).map(({ use, note, grounds }) =>
      said(words.uses[use], grounds, (words.useNotes as Readonly<Record<string, string>>)[note ?? '']),
    ),
    [headings.picking]: pickingOf(crop, isMetric),
    [headings.trouble]: troubles
      .filter((trouble) => trouble.crops.includes(crop.name))
      .map(({ sign, grounds }) =>
        said(fill(words.trouble, words.troubles[sign as keyof typeof words.troubles]), grounds),
      ),
    ...Object.fromEntries(traitNames.map((trait) => [traitHeadings[trait], figureOf(crop, trait, isMetric)])),
    [headings.seedLife]: seedLifeOf(crop),
    [headings.bushel]: bushelOf(crop, isMetric),
    [headings.beetles]: beetlesOf(crop),
  };
}

const usesOf = ({ name }: Crop) => chosenFor.filter((one) => one.crop === name);

function figureOf({ figures }: Crop, trait: Trait, isMetric: boolean): readonly Said[] {
  const figure = figures[trait];
  if (figure === undefined) return [];
  const text =
    'text' in figure
      ? ((wordFigures as Readonly<Record<string, string>>)[figure.text] ?? figure.text)
      : sayRange(figure, traits[trait].unit, isMetric);
  const notes: Readonly<Record<string, string>> = catalogue.cropNotes;
  return [said(text, figure.grounds, notes[figure.note ?? ''])];
}

/** @param unit of the published ends */
function sayRange(
  { low, high }: { readonly low: number; readonly high: number },
  unit: Unit,
  isMetric: boolean,
): string {
  const shownIn = isMetric ? inMetric(high, unit).unit : unit;
  const say = (published: number): string => {
    if (unit === 'share') return `${sayNumber(published * 100)}%`;
    // Converted, it is not known to more digits than it was published in.
    return sayNumber(shownIn === unit ? published : Number(inMetric(published, unit).value.toPrecision(3)));
  };
  const range = low === high ? say(low) : fill(words.range, { low: say(low), high: say(high) });
  return `${range} ${sayUnit(shownIn, high)}`.trim();
}

function pickingOf({ name, figures }: Crop, isMetric: boolean): readonly Said[] {
  const ripe = ripenessSigns[name];
  if (ripe !== undefined) return [said(catalogue.ripeness[ripe.sign], [ripe.ground])];
  const own = figures['picking size'];
  const measured = words.measured[figures['size measured']?.text === 'diameter' ? 'diameter' : 'length'];
  // The pickling cucumber's own size is that for pickles.
  const isPickedYounger = picklingCrops.includes(name) && own?.high !== picklingSize.high;
  return [
    ...(own === undefined
      ? []
      : [said(fill(words.ready, { size: sayRange(own, 'in', isMetric), measured }), own.grounds)]),
    ...(isPickedYounger
      ? [said(fill(words.forPickles, { size: sayRange(picklingSize, 'in', isMetric) }), picklingSize.grounds)]
      : []),
  ];
}

function seedLifeOf({ name }: Crop): readonly Said[] {
  const life = seedLife[seedKinds[name] ?? ''];
  return life === undefined ? [] : [said(sayRange(life, 'years', false), life.grounds)];
}

function bushelOf({ name }: Crop, isMetric: boolean): readonly Said[] {
  const kind = bushelKinds[name];
  if (kind === undefined) return [];
  const { elsewhere, ...main } = bushelWeights[kind];
  return [main, ...elsewhere].map(({ pounds, ground }) =>
    said(sayRange({ low: pounds, high: pounds }, 'lb', isMetric), [ground]),
  );
}

function beetlesOf({ name }: Crop): readonly Said[] {
  const known = wiltProneCrops[name];
  if (known === undefined) return [];
  const { beetlesPerPlant: at } = beetleThresholds[known.prone ? 'wiltProne' : 'notWiltProne'];
  return [said(sayRange({ low: at, high: at }, 'beetlesPerPlant', false), [known.ground])];
}

function said(text: string, grounds: readonly string[], note = ''): Said {
  const { and, note: withNote } = catalogue.citations;
  const without = grounds
    .filter((ground) => unsourced.has(ground))
    .map(sayGround)
    .join(and);
  return {
    text,
    remark: without === '' || note === '' ? without + note : without + fill(withNote, { note }),
    source: grounds
      .filter((ground) => !unsourced.has(ground))
      .map(sayGround)
      .join(and),
  };
}
