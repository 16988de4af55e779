/**
 * The states a sheet can be in, one look each, for axe, for every theme, for a phone and for large letters.
 * A new screen adds its looks here: an address that some page leads to and that no look visits fails the suite.
 */
import type { Page } from 'playwright-core'
import { toHash } from '../src/routes/workbench/link.ts'
import { kitchenYear } from './kitchen-day.ts'
import { KEEPING_LOOKS } from './looks-of-keeping.ts'
import { PAGES } from './pages.ts'

export interface Look {
  readonly state: State
  readonly path: string
  /** The level-one heading that says the page is there. */
  readonly heading: string
  /** Words that say the state is there. */
  readonly words?: string
  /** What a person does there to bring the state about. */
  readonly act?: (page: Page) => Promise<void>
}

export const STATES = [
  'empty book',
  'demo kitchen',
  'during a batch',
  'running canner',
  'stocked pantry',
  'food at work',
  'food looked for',
  'seed in tins',
  'field in silk',
  'field planned',
  'ash tested',
  'refused',
  'bad input',
  'offline',
  'loading',
  'error',
] as const
export type State = (typeof STATES)[number]

/** Its heading carries the day of sowing, in a year that is not always the same. */
const PLANTING_LOOK: Look = {
  state: 'field in silk',
  path: '/field/planting/:plantingId',
  heading: `Heron Foot flint, sown 14 May ${kitchenYear() - 1}`,
  words: 'Half of the plants in silk',
}

export const LOOKS: readonly Look[] = [
  ...PAGES.map(([path, heading]) => ({ state: 'empty book' as const, path, heading })),
  ...PAGES.map(([path, heading]) => ({ state: 'demo kitchen' as const, path, heading })),
  { state: 'demo kitchen', path: '/workbench/batch-plan', heading: 'From sack to shelf' },
  { state: 'demo kitchen', path: '/workbench/lethality', heading: 'Lethality of a temperature record' },
  {
    state: 'demo kitchen',
    path: '/workbench/no-such-calculation',
    heading: 'Workbench',
    words: 'There is no calculation called no-such-calculation.',
  },
  { state: 'demo kitchen', path: '/plan', heading: 'Seed first, then food.' },
  { state: 'demo kitchen', path: '/canner/run', heading: 'A canner run' },
  { state: 'during a batch', path: '/', heading: 'The year' },
  { state: 'during a batch', path: '/plan', heading: 'Plan a day' },
  { state: 'during a batch', path: '/canner/run', heading: 'A canner run', words: 'yard canner' },
  { state: 'during a batch', path: '/canner/card/:cannerId', heading: 'yard canner' },
  { state: 'during a batch', path: '/paper', heading: 'Paper' },
  { state: 'during a batch', path: '/paper/batch-sheet/:batchId', heading: 'Batch sheet' },
  { state: 'during a batch', path: '/paper/canner-card/:cannerId', heading: 'Card of yard canner' },
  { state: 'during a batch', path: '/paper/wall-board/:batchId', heading: 'Wall board' },
  { state: 'during a batch', path: '/paper/class-sheet/:batchId', heading: 'Class sheet', words: 'Making hominy' },
  ...(['during a batch', 'demo kitchen', 'stocked pantry'] as const).map((state) => ({
    state,
    path: `/paper/year/${kitchenYear()}`,
    heading: `The year ${kitchenYear()} on a sheet`,
  })),
  { state: 'stocked pantry', path: '/paper/call-list/load/YC-1', heading: 'Whom to call', words: 'the ford' },
  { state: 'during a batch', path: '/paper/process-log', heading: 'Blank process log' },
  { state: 'during a batch', path: '/kettle', heading: 'Kettle' },
  { state: 'during a batch', path: '/crib', heading: 'Crib', words: 'Lantern flint' },
  { state: 'running canner', path: '/', heading: 'The year', words: 'A canner run is open.' },
  { state: 'running canner', path: '/canner', heading: 'Canner', words: 'yard canner' },
  { state: 'during a batch', path: '/kettle/:batchId', heading: 'Kettle', words: 'Lantern flint' },
  { state: 'running canner', path: '/canner/run/:runId', heading: 'yard canner' },
  { state: 'running canner', path: '/heat/run/:runId', heading: 'Heat in the jar', words: 'YC-1' },
  { state: 'running canner', path: '/heat/replay/:runId', heading: "A logger's file", words: 'YC-1' },
  {
    state: 'running canner',
    path: '/heat/replay/:runId',
    heading: "A logger's file",
    words: 'Lines for the log',
    act: async (page) => {
      await page.getByRole('button', { name: 'Try with an invented file' }).click()
      await page.getByLabel('Clock at minute 0 of the file').fill('09:00')
      await page.getByRole('button', { name: 'Read the file' }).click()
    },
  },
  {
    state: 'demo kitchen',
    path: '/heat',
    heading: 'Heat in the jar',
    words: 'Why ten minutes of steam',
    act: async (page) => {
      await page.locator('summary', { hasText: 'More to move' }).click()
      await page.getByRole('radio', { name: 'pressed tight' }).check()
      await page.locator('svg[aria-label*="packed tight"]').waitFor()
    },
  },
  {
    state: 'bad input',
    path: '/heat/replay',
    heading: "A logger's file",
    words: 'The file was not taken',
    act: async (page) => {
      const buffer = Buffer.from('time (min),canner (C)\n0,70\n1,212\n')
      await page.getByLabel('Drop a logger').setInputFiles({ name: 'f.csv', mimeType: 'text/csv', buffer })
      await page.getByLabel('Clock at minute 0 of the file').fill('09:00')
      await page.getByRole('button', { name: 'Read the file' }).click()
    },
  },
  { state: 'running canner', path: '/paper/process-log/:runId', heading: 'Log of load YC-1' },
  { state: 'running canner', path: '/paper/load-heat/:runId', heading: 'Temperatures of load YC-1' },
  {
    state: 'running canner',
    path: '/paper/jar-heat',
    heading: 'Heat in the jar, on paper',
    words: 'What is published',
  },
  { state: 'stocked pantry', path: '/', heading: 'The year' },
  { state: 'stocked pantry', path: '/pantry', heading: 'Pantry', words: 'YC-1' },
  ...KEEPING_LOOKS,
  { state: 'stocked pantry', path: '/paper', heading: 'Paper', words: 'Log of load YC-1' },
  { state: 'stocked pantry', path: '/paper/labels', heading: 'Labels', words: 'K-1' },
  { state: 'stocked pantry', path: '/paper/labels?load=YC-1', heading: 'Labels', words: 'the ford' },
  { state: 'stocked pantry', path: '/canner/run/:runId', heading: 'yard canner', words: 'cellar' },
  { state: 'seed in tins', path: '/seed', heading: 'Seed', words: '46 of 50: 92 %, between 81 and 98 %' },
  { state: 'seed in tins', path: '/paper/seed-envelope/:seedLotId', heading: 'Seed envelope' },
  { state: 'seed in tins', path: '/paper/sprouting-test/:seedLotId', heading: 'Sheet for a sprouting test' },
  { state: 'seed in tins', path: '/paper/reserve-tags/:seedLotId', heading: 'Tags for the tins' },
  { state: 'ash tested', path: '/kettle/alkali/:alkaliLotId', heading: 'M-1', words: 'Strength by its tests' },
  { state: 'ash tested', path: '/kettle/alkali/:alkaliLotId/test', heading: 'How strong is M-1?' },
  { state: 'ash tested', path: '/kettle/dose', heading: 'How much alkali', words: 'Capacity: how long it lasts' },
  {
    state: 'ash tested',
    path: '/kettle/:batchId/rinse',
    heading: 'The rinse',
    words: 'Used against plan',
    act: (page) => page.getByLabel('Water for the whole wash').fill('8 gal'),
  },
  { state: 'ash tested', path: '/paper/lye-sheet/:alkaliLotId', heading: 'Sheet for handling alkali' },
  { state: 'ash tested', path: '/paper/titration/:alkaliLotId', heading: 'Titration sheet' },
  { state: 'ash tested', path: '/paper/rub-log/:batchId', heading: 'Sheet for rub tests' },
  {
    state: 'ash tested',
    path: '/kettle/alkali/:alkaliLotId/test',
    heading: 'How strong is M-1?',
    words: 'These figures do not fit together',
    act: async (page) => {
      await page.getByRole('button', { name: '4. Take a clear sample' }).click()
      await page.getByLabel('Clear liquor taken').fill('50 mL')
      await page.getByRole('button', { name: 'Pink: go on' }).click()
      await page.getByLabel('Vinegar so far').fill('4')
      await page.getByRole('button', { name: 'The colour is gone' }).click()
      await page.getByLabel('Vinegar in all').fill('3')
      await page.getByRole('button', { name: 'It stays gone' }).click()
    },
  },
  { state: 'empty book', path: '/field/plan', heading: "Plan next year's field", words: 'Tell the corn to eat' },
  { state: 'empty book', path: '/field/shelling', heading: 'Shell it by hand', words: 'No ears are in the crib' },
  { state: 'field in silk', path: '/field', heading: 'Field', words: 'Go on with Heron Foot flint' },
  {
    state: 'field planned',
    path: '/field/plan?plot=:plotId',
    heading: "Plan next year's field",
    words: 'Plants to stand',
    act: (page) => page.getByLabel('Shelled corn to eat').fill('20 lb'),
  },
  { state: 'field planned', path: '/field/plot/:plotId', heading: 'behind the house', words: 'Pole bean seeds' },
  PLANTING_LOOK,
  { state: 'field planned', path: '/field/plot/:plotId/sow', heading: 'Write down the sowing' },
  { state: 'field planned', path: '/field/plot/:plotId/crossing', heading: 'Will it cross?', words: 'over the road' },
  { state: 'field in silk', path: '/field/planting/:plantingId/yield', heading: 'What it may bring' },
  {
    state: 'field in silk',
    path: '/field/planting/:plantingId/days',
    heading: 'Degree-days to silk and ripe',
    words: 'Degree-days since sowing',
    act: async (page) => {
      const year = kitchenYear() - 1
      const lines = Array.from({ length: 100 }, (_, more) => {
        const day = new Date(Date.UTC(year, 4, 14 + more)).toISOString().slice(0, 10)
        return `${day}, 86, 62`
      })
      await page.getByLabel('A line a day: date, high, low').fill(lines.join('\n'))
    },
  },
  {
    state: 'field in silk',
    path: '/field/planting/:plantingId/harvest',
    heading: 'Bring the corn in',
    words: 'Shelled when dry',
    act: async (page) => {
      await page.getByLabel('Weight', { exact: true }).fill('40 lb')
      await page.getByRole('textbox', { name: 'Moisture of the kernels, in %' }).fill('20')
    },
  },
  { state: 'field in silk', path: '/field/shelling', heading: 'Shell it by hand', words: 'Hours, all hands together' },
  { state: 'field planned', path: '/paper', heading: 'Paper', words: 'Field sheet of behind the house' },
  { state: 'field planned', path: '/paper/field-sheet/:plotId', heading: 'Field sheet on paper' },
  { state: 'field planned', path: '/seed/off-types/:seedLotId', heading: 'Off-types', words: 'Odds, from one year' },
  {
    state: 'refused',
    path: `/workbench/pressure-band${toHash({ gauge: 'dial', elevationFt: '8005 ft' })}`,
    heading: 'Pressure printed for an elevation',
    words: 'Whom to ask',
  },
  { state: 'refused', path: '/plan/standing', heading: 'Where jars of hominy stand' },
  { state: 'refused', path: '/canner/card/:cannerId', heading: 'yard canner', words: 'No number for this canner here' },
  {
    state: 'bad input',
    path: `/workbench/gauge-correction${toHash({ test: [{ truePsi: 'ten', readsPsi: 10 }], truePsi: -11 })}`,
    heading: 'Dial gauge against its bench test',
    words: 'Please look at these again',
  },
  {
    state: 'bad input',
    path: '/crib',
    heading: 'Crib',
    words: '"plenty" has no amount to read.',
    act: async (page) => {
      const amount = page.getByLabel('How much')
      if (!(await amount.isVisible())) await page.locator('main summary').first().click()
      await amount.fill('plenty')
      await amount.blur()
    },
  },
  ...['/', '/crib', '/workbench/batch-plan'].map((path) => ({
    state: 'offline' as const,
    path,
    heading: path === '/' ? 'The year' : path === '/crib' ? 'Crib' : 'From sack to shelf',
    words: 'No connection.',
  })),
  { state: 'loading', path: '/workbench', heading: 'Opening the book' },
  { state: 'error', path: '/workbench', heading: 'This page did not open' },
]
