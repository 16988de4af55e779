/** Each plain address with the heading that says it is there. */
export const PAGES: readonly (readonly [path: string, heading: string])[] = [
  ['/', 'The year'],
  ['/seed', 'Seed'],
  ['/crib', 'Crib'],
  ['/kettle', 'Kettle'],
  ['/canner', 'Canner'],
  ['/keeping', 'Keeping'],
  ['/pantry', 'Pantry'],
  ['/field', 'Field'],
  ['/paper', 'Paper'],
  ['/workbench', 'Workbench'],
  ['/house', 'The house'],
  ['/heat', 'Heat in the jar'],
  ['/heat/replay', "A logger's file"],
  ['/people', 'People'],
  ['/no-such-page', 'No such page'],
]
