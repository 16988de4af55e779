/** Looks at keeping, crib and pantry, in the order in which one leads to the next: what is begun on one stands on another. */
import type { Page } from 'playwright-core'
import type { Look } from './looks.ts'

const atWork = (look: Omit<Look, 'state'>): Look => ({ state: 'food at work', ...look })
const lookedFor = (look: Omit<Look, 'state'>): Look => ({ state: 'food looked for', ...look })

async function beginTray(page: Page): Promise<void> {
  // Another theme shows the same page: the tray hangs already.
  if (await page.getByRole('heading', { name: 'Tray 1' }).isVisible()) return
  await page.getByLabel('Name of the tray or braid').fill('Tray 1')
  await page.getByLabel('Weight at the start').fill('5 kg')
  await page.getByLabel('Moisture now, %').fill('75.7')
  await page.getByRole('group', { name: 'Moisture now' }).getByLabel('Wet basis').check()
  await page.getByLabel('Moisture wanted, %').fill('10')
  await page.getByRole('group', { name: 'Moisture wanted' }).getByLabel('Wet basis').check()
  await page.getByRole('button', { name: 'Begin drying' }).click()
  await page.getByLabel('It weighs now').fill('3 kg')
  await page.getByRole('button', { name: 'Write the weight down' }).click()
  await page.getByText('Its weight so far').waitFor()
  await page.getByLabel('It weighs now').fill('3.2 kg')
  await page.getByRole('button', { name: 'Write the weight down' }).click()
}

export const KEEPING_LOOKS: readonly Look[] = [
  atWork({
    path: '/keeping/cooling',
    heading: 'Cooling',
    words: '41 °F (5 °C) by',
    act: async (page) => {
      await page.getByLabel('Which pan').fill('The big pot')
      await page.getByRole('button', { name: 'Start its two clock times' }).click()
    },
  }),
  atWork({ path: '/keeping/drying', heading: 'Drying', words: 'what dries grows lighter', act: beginTray }),
  atWork({
    path: '/keeping/drying',
    heading: 'Drying',
    words: 'Row 1, warmth: 72 is off the range',
    act: async (page) => {
      await page.locator('summary', { hasText: 'Another tray or braid' }).click()
      await page.getByRole('radio', { name: 'Kernels' }).check()
      await page.getByLabel('Weight at the start').fill('5 kg')
      await page.getByLabel('Moisture now, %').fill('22')
      await page.getByRole('group', { name: 'Moisture now' }).getByLabel('Wet basis').check()
      await page.getByLabel('Moisture wanted, %').fill('13')
      await page.getByRole('group', { name: 'Moisture wanted' }).getByLabel('Wet basis').check()
      await page.locator('summary', { hasText: 'Hours in told air' }).click()
      await page.getByRole('radio', { name: "A day's table" }).check()
      await page.getByLabel('Hours or clock, warmth, humidity').fill('08:00, 72, 30')
    },
  }),
  atWork({ path: '/', heading: 'The year', words: 'Tray 1: weigh it' }),
  atWork({ path: '/keeping', heading: 'Keeping', words: 'stop when it weighs' }),
  atWork({ path: '/keeping/freezer', heading: 'Fridge and freezer' }),
  atWork({ path: '/keeping/power-cut', heading: 'Power cut', words: 'Keep both doors shut.' }),
  atWork({
    path: '/keeping/mill',
    heading: 'Mill',
    words: 'Tortillas',
    act: (page) => page.getByLabel('Flour at hand').fill('1 kg'),
  }),
  atWork({ path: '/keeping/roast', heading: 'Roast', words: 'never water on burning oil' }),
  atWork({ path: '/crib', heading: 'Crib', words: 'Store of Lantern flint' }),
  atWork({ path: '/crib/store/:cornLotId', heading: 'Lantern flint', words: 'its storage time can be told' }),
  lookedFor({ path: '/pantry/lot/:foodLotId', heading: 'YC-1', words: 'What becomes of it' }),
  lookedFor({
    path: '/pantry/lot/:foodLotId',
    heading: 'YC-1',
    words: 'is not opened to look and not tasted',
    act: (page) => page.getByRole('radio', { name: 'Bulged' }).check(),
  }),
  lookedFor({ path: '/pantry/scan', heading: 'Read a label' }),
  lookedFor({
    path: '/pantry/scan',
    heading: 'Read a label',
    words: 'This book does not know the code ELSE-1.',
    act: async (page) => {
      await page.getByLabel('Code on the label').fill('ELSE-1')
      await page.getByRole('button', { name: 'Open it' }).click()
    },
  }),
  lookedFor({ path: '/pantry/recall', heading: 'Recall', words: 'Which one' }),
  lookedFor({ path: '/pantry/recall?load=YC-1', heading: 'Recall', words: 'What it reaches' }),
  lookedFor({ path: '/paper/recall-notice/load/YC-1', heading: 'Recall notice' }),
  lookedFor({ path: '/paper/call-list/load/YC-1', heading: 'Whom to call' }),
  lookedFor({
    path: '/pantry/recall/drill',
    heading: 'Drill',
    words: 'Tick what was found',
    act: async (page) => {
      await page.getByRole('button', { name: 'Pick a load and begin' }).click()
      await page.getByRole('button', { name: 'Done looking' }).click()
    },
  }),
  lookedFor({ path: '/pantry/went', heading: 'Where it went', words: 'All together' }),
  lookedFor({ path: '/pantry/buy', heading: 'Lids and jars to buy' }),
  { state: 'empty book', path: '/pantry/recall', heading: 'Recall', words: 'nothing can be recalled' },
  { state: 'empty book', path: '/pantry/went', heading: 'Where it went', words: 'went into the kettle yet' },
]
