/** Every kind of sheet, made out for the invented days, with what it must say and how many pages it may take. */
import { createWords, type Words } from '@crib/wording'
import {
  bagLabels,
  batchSheet,
  cannerCard,
  germinationSheet,
  jarLabels,
  LABEL_SHEETS,
  type LabelSheetId,
  labelsOfFood,
  lyeSheet,
  type PaperDocument,
  type PaperSize,
  processLog,
  refusedCard,
  reserveTags,
  rubLog,
  seedEnvelope,
  titrationSheet,
  wallBoard,
} from '../src/index.ts'
import * as heated from './heated-jars.ts'
import * as days from './invented-days.ts'
import * as kettle from './kettle-days.ts'
import * as planned from './planned-days.ts'
import * as recalls from './recalled-day.ts'
import { kettlebrookYear, ostreyClass, PACKS } from './year-and-class.ts'

const WORDS = createWords()

export interface SheetCase {
  readonly name: string
  readonly document: PaperDocument
  readonly pageCount: number
  /** Literals of scenarios.md S2, S3, S4, S5 and S6, as printed. */
  readonly mustSay: readonly string[]
}

export const PLAIN_SHEETS: readonly {
  readonly name: string
  readonly make: (paper: PaperSize, words: Words) => PaperDocument
  readonly mustSay: readonly string[]
  readonly pageCount?: number
}[] = [
  {
    name: 'batch sheet, S2',
    make: (paper, words) => batchSheet(days.OSTREY_BATCH, days.setting(paper), words),
    mustSay: [
      'Seed first',
      '6 liquid qt (5.68 L)',
      '6 cups',
      '58.5 US gal (221 L)',
      '6 Tbsp',
      '11 psi',
      '70 min',
      'Five re-boils',
      'Never down a drain.',
      'Care Dressed (treated) seed corn is never food.',
      'No tested canning process is known',
      'A-3 The old dial 6 11 psi 70 min',
      'page 1 of 1',
    ],
  },
  {
    name: 'canner card near the line, S3',
    make: (paper, words) => cannerCard(days.RIDGE_DIAL, days.setting(paper), words),
    mustSay: [
      'Hold at 12 psi 83 kPa',
      'The table’s own value for 604 m (1,982 ft): 11 psi (76 kPa)',
      '18 ft under the line',
      'A dip is any reading below 12 psi',
      'start the full time again from the beginning',
      '10 min',
      '60 min',
      'wait 10 min, then unfasten the lid',
      'tie to the lid',
    ],
  },
  {
    name: 'canner card of a gauge that reads high, S4',
    make: (paper, words) => cannerCard(days.TALLOW_DIAL, days.setting(paper), words),
    mustSay: [
      'Hold at 13 psi 90 kPa',
      'A dip is any reading below 12.5 psi',
      'A needle at 13 psi here is 11.5 psi true',
      'True 10 psi reads 11.5 psi. True 11 psi reads 12.5 psi. True 15 psi reads 16.5 psi.',
      'Next test due 3 Nov 2027',
      'thin film of the lubricant its manual names',
      'petroleum products never go on a rubber ring',
    ],
  },
  {
    name: 'batch sheet from a plan, S2',
    make: (paper, words) => planned.plannedBatchSheet(planned.ostreyPlan(), paper, words),
    mustSay: [
      'Seed first, then food.',
      '6 liquid qt (5.68 L)',
      '6 cups',
      '58.5 US gal (221 L)',
      '6 Tbsp',
      '11 psi',
      '70 min',
      'Ash sludge does not go down a drain',
      'Live embers hide in ash',
      'Gloves for the first rub',
      'No test for this food is known.',
      'OSTR-261103-A3',
    ],
  },
  {
    name: 'batch sheet from a plan of thick hulls in calcium hydroxide, washed by common practice, for the freezer',
    make: (paper, words) => planned.plannedBatchSheet(planned.ostreyPlan(planned.THICK_FOR_THE_FREEZER), paper, words),
    mustSay: ['Seed first, then food.', 'Scrub', 'Splash goggles on before the alkali goes in'],
  },
  {
    name: 'canner card from a plan near the line, S3',
    make: (paper, words) => planned.plannedCard(planned.NEIGHBOUR, paper, words),
    mustSay: ['Hold at 12 psi 83 kPa', '18 ft', '11 psi (76 kPa)', '60 min', 'A dip is any reading below 12 psi'],
  },
  {
    name: 'canner card from a plan of a gauge that reads high, S4',
    make: (paper, words) => planned.plannedCard(planned.TALLOW, paper, words),
    mustSay: [
      'Hold at 13 psi 90 kPa',
      'A dip is any reading below 12.5 psi',
      'thin film of the lubricant its manual names',
      'petroleum products never go on a rubber ring',
      'Usable today with a tag tied to the lid',
    ],
  },
  {
    name: 'card without a number from a plan off the table, S3',
    make: (paper, words) => planned.plannedCard(planned.CAMP, paper, words),
    mustSay: ['No number', '8,005.2 ft', 'ask your extension office', 'For information only: 15 lb'],
  },
  {
    name: 'canner card of a weight, S6',
    make: (paper, words) => cannerCard(days.MILLRIND_WEIGHT, days.setting(paper), words),
    mustSay: ['Use the 15 lb weight 103 kPa', 'the moment the weight stops its jiggle or rock', 'Loads A-1, A-2, A-3'],
  },
  {
    name: 'card without a number, S3',
    make: (paper, words) => refusedCard(days.CAMP_REFUSED, days.setting(paper), words),
    mustSay: ['No number', '8,005.2 ft is outside the table used here', 'ask your extension office'],
  },
  {
    name: 'process log, filled, S5',
    make: (paper, words) => processLog(days.HARK_LAKE_LOG, days.setting(paper), words),
    mustSay: [
      'Process log: load H-1',
      'Vented 10 min, held 12 psi for 60 min, from 10:56 to 11:56.',
      'The 32 min before it do not count',
      '12:39 Needle at zero 0 psi',
      '12:49 Lid off',
    ],
  },
  {
    name: 'process log, blank',
    make: (paper, words) => processLog({ head: {}, standing: days.RIDGE_DIAL.standing }, days.setting(paper), words),
    mustSay: ['Load code', 'Vent closed', 'Dip (full time again from the regain)', 'Lowest reading seen', 'Departures'],
  },
  {
    name: 'seed envelope, S1',
    make: (paper, words) => seedEnvelope(days.HERON_ENVELOPE, days.setting(paper), words),
    mustSay: [
      'Heron Foot flint, 2026',
      'Seed, not food.',
      'Parent ears, one a plant',
      '92 %, between 81 and 98 %',
      '2 Apr 2027',
      'Tested, given to, sown where',
    ],
  },
  {
    name: 'germination sheet, S1',
    make: (paper, words) => germinationSheet(days.HERON_TEST, days.setting(paper), words),
    mustSay: [
      'Sprouting test',
      '50 kernels, counted twice',
      'none picked for size or looks',
      '46 92 %, between 81 and 98 %',
      '45 90 %, between 78 and 97 %',
      'What is tested is used up',
    ],
  },
  {
    name: 'reserve tags, S1',
    make: (paper, words) => reserveTags(days.HERON_TAGS, days.setting(paper), words),
    mustSay: [
      'Sow 2027',
      'Sow 2028',
      'tin 1, kept: back room.',
      'From 60 parent ears',
      'Test again by 2 Apr 2027.',
      '510 kernels.',
    ],
  },
  {
    name: 'wall board, S6',
    make: (paper, words) => wallBoard(days.MILLRIND_BOARD, days.setting(paper), words),
    mustSay: [
      'B-3 Canner B 9 11 psi 13:56',
      'A-1 Canner A 14 15 lb weight 08:30',
      'falls under local, state or tribal food rules',
    ],
  },
  {
    name: 'recall notice of canner B, S6',
    make: (paper, words) => recalls.boardNotice(paper, words),
    mustSay: [
      'Recall: look for these jars',
      'MILL-261103-B1 3 Nov 2026 9',
      'MILL-261103-B3',
      'do not taste',
      'boil 30 min',
      'the kitchen by the mill',
    ],
  },
  {
    name: 'call list of canner B, S6',
    make: (paper, words) => recalls.keeperList(paper, words),
    mustSay: [
      'house 4 MILL-261103-B1 2',
      'house 30',
      'This sheet stays with the keeper',
      '1 was given away without a name',
    ],
  },
  {
    name: 'before alkali goes in',
    make: (paper, words) => lyeSheet(kettle.LYE, days.setting(paper), words),
    mustSay: [
      'Corrosive to skin and eyes',
      '56.7 g',
      'Cold water first',
      'no vinegar',
      'Your local poison centre',
      'Your local emergency number',
      'Care Splash goggles on before the alkali goes in',
      'hot alkali eats them',
    ],
  },
  {
    name: 'titration sheet, S2',
    make: (paper, words) => titrationSheet(kettle.TITRATION, days.setting(paper), words),
    mustSay: [
      'M-0',
      '0.9 eq/kg',
      'c (2 P - T) / V',
      'c (T - P) / V',
      'Read T, from the very first drop on',
      'as hydroxide and carbonate',
    ],
  },
  {
    name: 'rub log, S2',
    make: (paper, words) => rubLog(kettle.RUB_LOG, days.setting(paper), words),
    mustSay: [
      'The rub decides, not the clock',
      'Slipped of 20',
      'Lantern flint, 9 lb',
      'the pain may come hours later',
    ],
  },
  {
    name: 'class sheet of a corn that may be named, S2',
    make: (paper, words) => ostreyClass(paper, words, 'Lantern flint'),
    pageCount: 2,
    mustSay: [
      'Making hominy',
      'Lantern flint hominy',
      'Asked with it: Not to be sold.',
      'Seed is put by before any corn is food.',
      'Splash goggles on before the alkali goes in',
      'Rub the hulls off',
      'What we saw',
      'go by the canner',
    ],
  },
  {
    name: 'class sheet of a corn that is not named',
    make: (paper, words) => ostreyClass(paper, words),
    pageCount: 2,
    mustSay: ['Making hominy', 'Hominy · 14 Nov 2026', 'flood with water at once for 15 min'],
  },
  {
    name: 'year sheet, S1 and S2',
    make: kettlebrookYear,
    mustSay: [
      'The year 2026',
      'Brought in 44.97 lb (20.4 kg)',
      'Cobs and silk (gap)',
      'OSTR-261103-A3 The old dial 6 70 min Yes, see the log',
      '92 %, between 81 and 98 %',
      'Lantern flint, 2025',
      'not tested',
      'What we learnt',
    ],
  },
  {
    name: 'heat in a made-up jar of loose kernels',
    make: heated.looseJar,
    mustSay: [
      'A made-up jar in a canner',
      'This does not change what the published directions say.',
      'nine tenths of made-up jars',
      'Vent 10 min of steady steam before closing, every load',
      'Lethality of the made-up jar',
      'for study alone',
    ],
  },
  {
    name: 'heat in a made-up jar packed tight',
    make: heated.solidJar,
    mustSay: ['pressed tight', 'Middle of the jar', 'No published direction is for such a pack'],
  },
  {
    name: 'temperatures of a load, by its log',
    make: heated.loadByHand,
    mustSay: [
      'Temperatures of load OSTR-260415-A1',
      'This does not change what the published directions say.',
      'canner, by the gauge',
      '10:49 heat off',
      'None written down.',
      'no total is made of them',
    ],
  },
  {
    name: 'temperatures of a load, by its logger',
    make: heated.loadByLogger,
    mustSay: [
      'OSTR-260415-A2',
      '13:30 dipped, 8.5 psi',
      '14:49 heat off',
      'canner (°C), as measured',
      'jar (°C), as measured',
      'modelled: packed solid',
    ],
  },
]

export const PLAIN_CASES: readonly SheetCase[] = (['letter', 'a4'] as const).flatMap((paper) =>
  PLAIN_SHEETS.map(({ name, make, mustSay, pageCount = 1 }) => ({
    name: `${name}, ${paper}`,
    document: make(paper, WORDS),
    pageCount,
    mustSay: [...mustSay, 'Invented demo, not a real kitchen', 'numbers by guidance-2026-11'],
  })),
)

/** 27 pints of canner B: whole sheets of 21, 30 and 10 places. */
const LABEL_PAGES: Readonly<Record<LabelSheetId, number>> = {
  'a4-3x7': 2,
  'a4-3x8': 2,
  'a4-2x7': 2,
  'a4-2x4': 4,
  'letter-3x10': 1,
  'letter-2x5': 3,
  'letter-2x7': 2,
  'letter-2x3': 5,
  'a4-2x5-cut': 3,
  'letter-2x5-cut': 3,
}

/** Ten packs: two each of five kinds. */
const PACK_PAGES: Readonly<Record<LabelSheetId, number>> = {
  ...LABEL_PAGES,
  'a4-3x7': 1,
  'a4-3x8': 1,
  'a4-2x7': 1,
  'a4-2x4': 2,
  'letter-2x5': 1,
  'letter-2x7': 1,
  'letter-2x3': 2,
  'a4-2x5-cut': 1,
  'letter-2x5-cut': 1,
}

/** Holds a departed load or the word demo beside a household, not all three; builders.test.ts prints the departed one. */
const SMALLEST: LabelSheetId = 'letter-3x10'

function labelsFor(sheetId: LabelSheetId) {
  if (sheetId !== SMALLEST) return days.MILLRIND_LABELS
  return days.MILLRIND_LABELS.map((label) => ({ ...label, departed: false }))
}

export interface LabelCase extends SheetCase {
  readonly sheetId: LabelSheetId
  readonly records: readonly string[]
}

export const LABEL_CASES: readonly LabelCase[] = (Object.keys(LABEL_SHEETS) as LabelSheetId[]).flatMap((sheetId) => [
  {
    name: `jar labels, S6, ${sheetId}`,
    sheetId,
    document: jarLabels(labelsFor(sheetId), { sheet: sheetId }, days.setting('a4'), WORDS),
    pageCount: LABEL_PAGES[sheetId],
    records: days.MILLRIND_LABELS.map(({ record }) => record ?? ''),
    mustSay: [
      'MILL-261103-B1',
      'MILL-261103-B3',
      '3 Nov 2026',
      'Copper Hinge hominy',
      'house 7',
      'oil 11 min',
      'never taste',
      ...(sheetId === SMALLEST ? [] : ['Departed: see log.']),
      'emo',
    ],
  },
  {
    name: `bag labels on a part-used sheet, ${sheetId}`,
    sheetId,
    document: bagLabels(days.FREEZER_BAGS, { sheet: sheetId, skipCount: 3 }, days.setting('a4'), WORDS),
    // Three used and four more: one too many for the sheet of six.
    pageCount: sheetId === 'letter-2x3' ? 2 : 1,
    records: days.FREEZER_BAGS.map(({ record }) => record ?? ''),
    mustSay: ['LF-3-F', '3 Nov 2026', 'Lantern flint hominy', 'Frozen', 'emo'],
  },
  ...(sheetId === SMALLEST
    ? []
    : [
        {
          name: `packs kept five ways, ${sheetId}`,
          sheetId,
          document: labelsOfFood(
            PACKS.map((label) => ({ label, count: 2 })),
            { sheet: sheetId },
            days.setting('a4'),
            WORDS,
          ),
          pageCount: PACK_PAGES[sheetId],
          records: PACKS.flatMap(({ record }) => [record, record]),
          mustSay: ['3 Nov 2027', '0.5 kg', 'Airtight, cool and dark', 'Not to be sold.', 'emo'],
        },
      ]),
])
