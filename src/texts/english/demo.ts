/** Names in the invented garden. Nothing in it is anybody's. */

export const demo = {
  place: 'Invented garden on the creek',
  plots: {
    creek1: 'Creek 1',
    creek2: 'Creek 2',
    creek3: 'Creek 3',
    tunnel: 'Tunnel',
    hillPatch: 'Hill patch',
    fence: 'Fence',
    northField: 'North field',
    southField: 'South field',
    slope: 'Slope',
    sand1: 'Sand 1',
    sand2: 'Sand 2',
    arbor: 'Arbor',
  },
  /** As a grower types them. */
  crops: {
    slicing: 'slicing cucumber',
    pickling: 'pickling cucumber',
    bush: 'bush cucumber',
    english: 'English cucumber',
    zucchini: 'zucchini',
    summerSquash: 'summer squash',
    winterSquash: 'winter squash',
    pumpkin: 'pumpkin',
    cantaloupe: 'cantaloupe',
    watermelon: 'watermelon',
    seedless: 'seedless watermelon',
    gourd: 'gourd',
  },
  lots: { treated: 'treated: read the label', notice: 'two weeks’ notice' },
};
