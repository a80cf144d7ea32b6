/** What a part can be made of. Each word is here because something follows from it, or because it rules something out. */
export const materials = [
  'aluminum',
  'asbestos',
  'brass',
  'bronze',
  'carbon',
  'ceramic',
  'copper',
  'iron',
  'lead',
  'paper',
  'plastic',
  'rubber',
  'steel',
  'titanium',
  'zinc',
] as const;

export type Material = (typeof materials)[number];

/** Other spellings of the same. */
export const materialSpellings: ReadonlyMap<string, Material> = new Map([['aluminium', 'aluminum']]);

/** Caustic dissolves these and makes hydrogen of them: their oxides are amphoteric (school chemistry, from memory). */
const dissolvedByCaustic: ReadonlySet<Material> = new Set(['aluminum', 'zinc']);

/** Grit cuts these away, or stays in them (common practice, no source). */
const cutByGrit: ReadonlySet<Material> = new Set(['carbon', 'paper', 'plastic', 'rubber']);

/** Their dust or fumes harm for life. */
const toxic: ReadonlySet<Material> = new Set(['asbestos', 'lead']);

export const isDissolvedByCaustic = (material: Material | null) =>
  material !== null && dissolvedByCaustic.has(material);
export const isCutByGrit = (material: Material | null) => material !== null && cutByGrit.has(material);
export const isToxic = (material: Material | null) => material !== null && toxic.has(material);
