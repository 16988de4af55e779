/** Invented days to print: numbers are literals of the acceptance scenarios S2, S3, S4, S5 and S6. */
import type { Reckoned, Rounding, Unit } from '@crib/science'
import type {
  BagLabelInput,
  BatchSheetInput,
  CannerCardInput,
  GerminationSheetInput,
  JarLabelInput,
  PaperSize,
  PrintSetting,
  ProcessLogInput,
  RefusedCardInput,
  ReserveTagInput,
  SeedEnvelopeInput,
  WallBoardInput,
} from '../src/index.ts'

export function reckoned(value: number, unit: Unit, more: Partial<Reckoned> = {}): Reckoned {
  const rounding: Rounding = { mode: 'nearest', step: 0.1 }
  return {
    id: 'printed',
    value,
    unit,
    rounding,
    basis: 'published',
    sourceKeys: [],
    inputs: {},
    edition: 'guidance-2026-11',
    codeVersion: '0.1.0',
    ...more,
  }
}

const clock = (text: string) => {
  const [hours = 0, minutes = 0] = text.split(':').map(Number)
  return reckoned(hours * 60 + minutes, 'ClockMin', { rounding: { mode: 'nearest', step: 1 } })
}

export const setting = (paper: PaperSize): PrintSetting => ({
  paper,
  invented: true,
  edition: 'guidance-2026-11',
  madeAt: '2026-11-03T07:00:00Z',
})

/** S2: 9 lb of Lantern flint at Ostrey Point, 820 ft, one dial canner of 7. */
export const OSTREY_BATCH: BatchSheetInput = {
  batch: 'Lantern flint, 9 lb',
  date: '2026-11-03',
  place: 'Ostrey Point, 820 ft',
  record: 'crib:batch/LF-3',
  seedLines: [
    'Seed first, then food. Put by for two plantings, by eye: two tins, one in the back room, one at the neighbour’s. What follows is food.',
  ],
  amounts: [
    { label: 'Dry shelled corn', value: reckoned(6, 'LiquidQt') },
    { label: 'Ash, lot M-1, sifted', value: reckoned(6, 'Cup'), note: 'your own record: 1 cup to 1 liquid qt' },
    { label: 'Pot-loads, 2 liquid qt each', value: reckoned(3, 'Count') },
    { label: 'Water for kettle and rinses', value: reckoned(58.5, 'LiquidGal') },
    {
      label: 'Liquid qt jars, loose fill to 1 in',
      value: reckoned(18, 'Count', { low: 13.2, high: 24, rounding: { mode: 'up', step: 1 } }),
      note: 'set out jars and lids for the high end',
    },
    { label: 'Salt, if wanted', value: reckoned(6, 'Tbsp') },
  ],
  stages: [
    {
      clock: clock('07:30'),
      what: 'Pick over the kernels',
      details: ['Mouldy, broken and odd ones out. Weigh what is left.'],
      cautions: ['Dressed (treated) seed corn is never food.'],
      writeIns: ['amount'],
    },
    {
      clock: clock('07:45'),
      what: 'Stir ash into cold water, strain, bring to a boil',
      details: ['8 liquid qt water and 2 cups ash for each pot-load of 2 liquid qt.'],
      cautions: [
        'Eyes and gloves. No aluminium pot or colander. Air in the room, children out of reach.',
        'Live embers can hide in an ash pail for days.',
      ],
      writeIns: ['start'],
    },
    {
      clock: clock('08:15'),
      what: 'Corn in; low boil, stirring',
      details: ['Look in and top up every 15 min. It darkens, then the first hulls lift.'],
      cautions: ['It foams and scalds: leave a third of the pot empty.'],
      writeIns: ['start', 'amount'],
    },
    {
      clock: clock('09:10'),
      what: 'Rub test: do the hulls slip?',
      details: ['Your record: slipped at 55 min. Look again every 15 min; the kernel decides.'],
      cautions: ['Rinse and glove before the first rub.'],
      writeIns: ['clock'],
    },
    { what: 'Lift, drain; ash sludge to the heap', cautions: ['Never down a drain.'], writeIns: ['end'] },
    {
      clock: clock('09:25'),
      what: 'Four cold rinses, rubbing',
      timesCount: 4,
      details: ['2 US gal each; skim the hulls.'],
      writeIns: ['count'],
    },
    { clock: clock('09:50'), what: 'Five re-boils, 5 min each, fresh water each', timesCount: 5, writeIns: ['clock'] },
    { what: 'Skim; second sort', details: ['Dark tips and tails out.'], writeIns: ['amount'] },
    { clock: clock('10:50'), what: 'Last cook in fresh water, 30 to 45 min', writeIns: ['start', 'end'] },
    {
      clock: clock('11:30'),
      what: 'Fill for the next load only',
      details: ['Hot jars, hot kernels, clear boiling water, loose, to 1 in of headspace. Bubbles out, rims wiped.'],
      cautions: ['Soft, split kernels cloud the liquid with starch: not into jars.'],
      writeIns: ['count'],
    },
    {
      clock: clock('11:45'),
      what: 'Canner: see its card; write the log',
      details: ['Rack in, 2 to 3 in of hot water, lid level, opposite knobs together.'],
      cautions: ['Steam: open the lid away from your face.'],
      writeIns: ['start', 'end'],
    },
    { what: 'What waits for its load stays hot or chilled', writeIns: ['clock'] },
    {
      clock: clock('17:40'),
      what: 'Out, upright, untouched for 12 to 24 h; then seals, rings off, labels',
      writeIns: ['clock'],
    },
  ],
  loads: ['A-1', 'A-2', 'A-3'].map((code, index) => ({
    code,
    canner: 'The old dial',
    jars: reckoned(6, 'Count'),
    hold: reckoned(11, 'PsiGauge'),
    processMin: reckoned(70, 'Min'),
    startsAt: clock(['11:45', '14:28', '17:11'][index] ?? '00:00'),
    endsAt: clock(['14:13', '16:56', '19:39'][index] ?? '00:00'),
  })),
  standing: [
    'No tested canning process is known for hominy made with ash. The 60 and 70 min are from withdrawn lye-hominy directions, hot pack. Fresh, frozen and dried stand first.',
  ],
}

/** S3: Vellum Ridge neighbour at 604 m, 18 ft under the line, dial gauge, pints. */
export const RIDGE_DIAL: CannerCardInput = {
  canner: 'Canner B',
  site: 'The neighbour’s place, 604 m',
  gauge: 'dial',
  loadCodes: ['B-1', 'B-2', 'B-3'],
  jar: 'liquid pt jars, hot pack',
  hold: reckoned(12, 'PsiGauge'),
  dipBelow: reckoned(12, 'PsiGauge'),
  tableValue: reckoned(11, 'PsiGauge'),
  elevation: reckoned(604, 'M', { rounding: { mode: 'nearest', step: 1 } }),
  why: [
    'Your place is 18 ft under the line at 2,000 ft, and an elevation read from a map is good to about 50 ft, so the card gives the higher number.',
  ],
  ventMin: reckoned(10, 'Min'),
  processMin: reckoned(60, 'Min'),
  lidWaitMin: reckoned(10, 'Min'),
  standing: [
    'For hominy made with ash or calcium hydroxide no tested canning process is known. The minutes come from withdrawn lye-hominy directions, hot pack.',
  ],
  habits: [
    'Some makers print 7 min of venting; today’s direction is 10, since air left in makes it cooler than the gauge says.',
  ],
  gaugeTest: {
    testedOn: '2026-04-12',
    tester: 'the extension office',
    dueOn: '2027-04-12',
    points: [{ truth: reckoned(11, 'PsiGauge'), reads: reckoned(11, 'PsiGauge') }],
  },
}

/** S4: Tallow Ridge, a dial that reads 1.5 high: below 12.5 is a dip, hold at 13. */
export const TALLOW_DIAL: CannerCardInput = {
  ...RIDGE_DIAL,
  canner: 'Grandmother’s canner',
  site: 'Tallow Ridge, 1,340 ft',
  hold: reckoned(13, 'PsiGauge'),
  dipBelow: reckoned(12.5, 'PsiGauge'),
  trueAtHold: reckoned(11.5, 'PsiGauge'),
  elevation: reckoned(1340, 'Ft'),
  why: ['This dial reads 1.5 psi high, so 11 true reads 12.5; its marks are whole psi, so hold at 13.'],
  cautions: [
    'First choice: the 15 lb weight, with the needle only a witness.',
    'On the metal rim, a thin film of the lubricant its manual names; petroleum products never go on a rubber ring.',
  ],
  gaugeTest: {
    testedOn: '2026-11-03',
    tester: 'the bench',
    dueOn: '2027-11-03',
    points: [
      { truth: reckoned(10, 'PsiGauge'), reads: reckoned(11.5, 'PsiGauge') },
      { truth: reckoned(11, 'PsiGauge'), reads: reckoned(12.5, 'PsiGauge') },
      { truth: reckoned(15, 'PsiGauge'), reads: reckoned(16.5, 'PsiGauge') },
    ],
  },
  gaugeStanding: 'Usable with this tag tied to the lid; replace at the first chance.',
}

/** S6: canner A, a weight, 1,180 ft. */
export const MILLRIND_WEIGHT: CannerCardInput = {
  canner: 'Canner A',
  site: 'Millrind community kitchen, 1,180 ft',
  gauge: 'weight',
  loadCodes: ['A-1', 'A-2', 'A-3'],
  jar: 'liquid pt jars, hot pack',
  hold: reckoned(15, 'LbWeight'),
  tableValue: reckoned(15, 'LbWeight'),
  elevation: reckoned(1180, 'Ft'),
  why: ['Above 1,000 ft the weight is 15 lb.'],
  ventMin: reckoned(10, 'Min'),
  processMin: reckoned(60, 'Min'),
  lidWaitMin: reckoned(10, 'Min'),
  standing: RIDGE_DIAL.standing,
}

/** S3: the cousin's camp, 2,440 m: off the table. */
export const CAMP_REFUSED: RefusedCardInput = {
  canner: 'The camp canner',
  site: 'A cousin’s camp, 2,440 m',
  refused:
    '8,005.2 ft is outside the table used here, which covers 0 to 8,000 ft. No pressure is shown; the table is not stretched.',
  why: ['For information only: 15 lb is the printed top weight.'],
  askWhom: ['Please ask your extension office.'],
}

/** S5: wind under the kettle at Hark Lake landing, 2,150 ft: one dip, one new start. */
export const HARK_LAKE_LOG: ProcessLogInput = {
  head: {
    loadCode: 'H-1',
    date: '2026-11-03',
    canner: 'Landing canner',
    gauge: 'dial, tested true',
    food: 'hominy, wood ash',
    pack: 'hot pack, 4 rinses, 5 re-boils',
    jars: '9 liquid pt jars',
    elevation: reckoned(2150, 'Ft'),
    hold: reckoned(12, 'PsiGauge'),
    processMin: reckoned(60, 'Min'),
  },
  standing: RIDGE_DIAL.standing,
  run: {
    done: ['Vented 10 min, held 12 psi for 60 min, from 10:56 to 11:56.'],
    departures: ['Needle below 12 psi at 10:49. The 32 min before it do not count; full time begun again at 10:56.'],
    lowestReading: reckoned(10, 'PsiGauge'),
    sealedCount: reckoned(9, 'Count'),
    notSealed: 'none',
    lines: [
      { clock: clock('09:40'), what: 'Lid fastened, heat up, vent open' },
      { clock: clock('09:58'), what: 'Strong steady steam' },
      { clock: clock('10:08'), what: 'Vent closed' },
      { clock: clock('10:17'), what: 'Needle reaches target: time begins', reading: reckoned(12, 'PsiGauge') },
      { clock: clock('10:49'), what: 'Gust; needle down', reading: reckoned(10, 'PsiGauge') },
      { clock: clock('10:56'), what: 'Back at target: time begins again', reading: reckoned(12, 'PsiGauge') },
      { clock: clock('11:20'), what: 'Needle climbs, brought back by 11:25', reading: reckoned(15, 'PsiGauge') },
      { clock: clock('11:56'), what: 'Finish; heat off' },
      { clock: clock('12:39'), what: 'Needle at zero', reading: reckoned(0, 'PsiGauge') },
      { clock: clock('12:49'), what: 'Lid off' },
    ],
  },
}

/** S6: canner B's 27 pints: three loads of nine, one household each per four jars; some loads departed. */
export const MILLRIND_LABELS: readonly JarLabelInput[] = Array.from({ length: 27 }, (_, index) => {
  const load = Math.floor(index / 9) + 1
  return {
    loadCode: `MILL-261103-B${load}`,
    date: '2026-11-03',
    contents: 'Copper Hinge hominy',
    household: `house ${Math.floor(index / 4) + 1}`,
    boilMin: reckoned(11, 'Min'),
    departed: load === 2,
    record: `crib:load/MILL-261103-B${load}`,
  }
})

/** S6: nine load records, three canners, three rounds; 14 + 9 + 9 a round, rounds 163 min apart. */
export const MILLRIND_BOARD: WallBoardInput = {
  date: '2026-11-03',
  loads: [1, 2, 3].flatMap((round) =>
    (['A', 'B', 'C'] as const).map((canner) => ({
      code: `${canner}-${round}`,
      canner: `Canner ${canner}`,
      jars: reckoned(canner === 'A' ? 14 : 9, 'Count'),
      hold: canner === 'B' ? reckoned(11, 'PsiGauge') : reckoned(15, 'LbWeight'),
      startsAt: clock(['08:30', '11:13', '13:56'][round - 1] ?? '00:00'),
    })),
  ),
  notes: ['Serving, selling or handing out jars of low-acid food falls under local, state or tribal food rules.'],
}

/** S2 with part of the batch frozen. */
export const FREEZER_BAGS: readonly BagLabelInput[] = Array.from({ length: 4 }, () => ({
  lotCode: 'LF-3-F',
  date: '2026-11-03',
  contents: 'Lantern flint hominy',
  lines: ['Frozen, drained. Heat until hot all through.'],
  record: 'crib:lot/LF-3-F',
}))

/** S1: the reserve of Kettlebrook Hollow. 46 of 50 sprouted, 0.808 to 0.978. */
const HERON_GERMINATION = reckoned(0.92, 'Fraction', {
  low: 0.8077,
  high: 0.9778,
  rounding: { mode: 'nearest', step: 0.01 },
  basis: 'computed',
})

export const HERON_ENVELOPE: SeedEnvelopeInput = {
  name: 'Heron Foot flint',
  seasonYear: 2026,
  putByOn: '2026-10-20',
  source: 'own plot, Kettlebrook Hollow',
  parentEars: reckoned(60, 'Count'),
  kernels: reckoned(200, 'Count'),
  germination: HERON_GERMINATION,
  testAgainBy: '2027-04-02',
  container: 'envelope 1 of 1',
  lines: ['Sow when the soil is warm, four rows or more in a block.'],
  record: 'crib:seed-lot/HF-26',
}

export const HERON_TEST: GerminationSheetInput = {
  lot: 'Heron Foot flint, 2026, tin 1',
  laidOn: '2027-03-26',
  parts: [{ ofCount: 25 }, { ofCount: 25 }],
  ranges: [
    { sproutedCount: 46, germination: HERON_GERMINATION },
    {
      sproutedCount: 45,
      germination: reckoned(0.9, 'Fraction', {
        low: 0.7819,
        high: 0.9667,
        rounding: { mode: 'nearest', step: 0.01 },
        basis: 'computed',
      }),
    },
  ],
}

export const HERON_TAGS: ReserveTagInput = {
  name: 'Heron Foot flint',
  seasonYear: 2026,
  parentEars: reckoned(60, 'Count'),
  germination: HERON_GERMINATION,
  testAgainBy: '2027-04-02',
  tins: [
    { container: 'tin 1', place: 'back room', sowYear: 2027, kernels: reckoned(510, 'Count') },
    { container: 'tin 2', place: 'at the neighbour', sowYear: 2028, kernels: reckoned(510, 'Count') },
  ],
  lines: ['Seed first, then food.'],
}
