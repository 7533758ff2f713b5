/** The verdict on two crops in the language of the catalogue. */
import type { Crossing } from '../calc/flowers/crossing';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';

const texts = catalogue.crossings;

export function sayCrossing(crossing: Crossing, isSaving: boolean): string {
  const { verdict, shared, spoilsFruit, mayTurnBitter } = crossing;
  const mixes = verdict !== 'do not cross' && verdict !== 'seedless';
  return [
    fill(texts[verdict], { species: shared.join(texts.or) }),
    spoilsFruit ? texts.fruitSpoiled : texts.fruitUnaffected,
    ...(mixes ? [isSaving ? texts.keepPure : texts.seedWouldMix] : []),
    ...(mayTurnBitter ? [texts.bitter] : []),
  ].join(' ');
}
