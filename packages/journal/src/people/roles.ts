/** Who may do and read what. Pure tables; the doors ask here and nowhere else. The table in words is docs/people.md. */
import type { Visibility } from '../envelope.ts'
import type { Kind } from '../kinds/index.ts'

/** Of a person in one kitchen. Whoever has none there is an outsider. */
export const ROLES = ['keeper', 'minder', 'helper', 'reader'] as const
export type Role = (typeof ROLES)[number]
export type Standing = Role | 'outsider'

/**
 * reckon: run a calculation. print: set a sheet as PDF. read: what `mayRead` lets through. work: what is done with corn
 * and food. house: the kitchen's habits, pots, canners, gauges. amend: correct or withdraw any line. amend-own: one's
 * own lines. share: who may see a lot. see-people: who belongs to the kitchen. people: invite, change a role, let go.
 * care: how the book is kept, its room and its backups.
 */
export const ACTS = [
  'reckon',
  'print',
  'read',
  'see-people',
  'work',
  'amend-own',
  'house',
  'amend',
  'share',
  'people',
  'care',
] as const
export type Act = (typeof ACTS)[number]

const MAY: { readonly [S in Standing]: readonly Act[] } = {
  keeper: ACTS,
  minder: ['reckon', 'print', 'read', 'see-people', 'work', 'amend-own', 'house', 'amend'],
  helper: ['reckon', 'print', 'read', 'see-people', 'work', 'amend-own'],
  reader: ['reckon', 'print', 'read'],
  outsider: ['reckon', 'print', 'read'],
}

export function mayDo(standing: Standing, act: Act): boolean {
  return MAY[standing].includes(act)
}

/** From the keeper alone to anyone. */
export const VISIBILITIES = ['keeper', 'family', 'community', 'open'] as const satisfies readonly Visibility[]

/** How far a line is opened: 0 the keeper alone, 3 anyone. [step] */
export type Width = 0 | 1 | 2 | 3

export function widthOf(visibility: Visibility): Width {
  return VISIBILITIES.indexOf(visibility) as Width
}

/** The least a line must be opened for somebody of this standing to read it. */
const READS_FROM: { readonly [S in Standing]: Width } = { keeper: 0, minder: 1, helper: 1, reader: 2, outsider: 3 }

export function readsFrom(standing: Standing): Width {
  return READS_FROM[standing]
}

export function mayRead(standing: Standing, visibility: Visibility): boolean {
  return widthOf(visibility) >= READS_FROM[standing]
}

/** What writing a line of each kind is. A new kind does not compile until it says. */
const ACT_OF_KIND: { readonly [K in Kind]: Act } = {
  'kitchen-opened': 'house',
  'kitchen-noted': 'house',
  'corn-lot-brought-in': 'work',
  'corn-sorted': 'work',
  'corn-shelled': 'work',
  'seed-put-by': 'work',
  'alkali-lot-recorded': 'work',
  'alkali-lot-judged': 'work',
  'alkali-lot-tested': 'work',
  'pot-recorded': 'house',
  'canner-recorded': 'house',
  'gauge-tested': 'house',
  'standing-read': 'work',
  'batch-planned': 'work',
  'stage-noted': 'work',
  'cook-noted': 'work',
  'run-begun': 'work',
  'run-event': 'work',
  'food-put-up': 'work',
  'lot-used': 'work',
  'entry-corrected': 'amend',
  'entry-withdrawn': 'amend',
  'person-invited': 'people',
  'person-joined': 'people',
  'role-changed': 'people',
  'person-left': 'people',
  'visibility-set': 'share',
  'plot-recorded': 'work',
  'field-planned': 'work',
  'neighbour-corn-recorded': 'work',
  'planting-recorded': 'work',
  'stand-counted': 'work',
  'tassel-seen': 'work',
  'silk-seen': 'work',
  'harvest-brought-in': 'work',
  'seed-lot-recorded': 'work',
  'germination-tested': 'work',
  'seed-store-noted': 'work',
  'seed-given': 'work',
  'seed-sown': 'work',
  'off-types-counted': 'work',
  'moisture-tested': 'work',
  'store-condition-noted': 'work',
  'food-opened': 'work',
  'recall-noted': 'work',
  'cooling-noted': 'work',
  'drying-noted': 'work',
  'food-worked': 'work',
  'food-moved': 'work',
  'photo-taken': 'work',
}

/** Null for a kind of a newer program: only the keeper may bring such lines. */
export function actOfKind(kind: string): Act | null {
  return Object.hasOwn(ACT_OF_KIND, kind) ? ACT_OF_KIND[kind as Kind] : null
}
