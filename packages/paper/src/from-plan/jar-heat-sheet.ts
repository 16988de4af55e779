/** A made-up jar on a sheet: cut open at two moments, its curves with their band, and the published rule last. */
import type { CutJar, JarHeat } from '@crib/planning'
import type { JarPicture, MadeUpRun } from '@crib/science'
import { formatQuantity, formatReckoned, type Words } from '@crib/wording'
import { blocksOf, documentOf, factOf, type PrintSetting, wordAll } from '../documents/said.ts'
import type { CurvesBlock } from '../drawn-blocks.ts'
import type { Block, Fact, PaperDocument } from '../model.ts'
import { greysOf, minuteAxis, temperatureAxes } from './temperature-axes.ts'

const MOMENTS = ['steamMin', 'ventClosedMin', 'atPressureMin', 'heatOffMin', 'zeroMin'] as const
/** After zero the curves are drawn this far. [min] */
const AFTER_ZERO_MIN = 20
const KPA_PER_PSI = 6.894757293168

/** One page; its number is a made-up jar's, and it ends with what is published. */
export function jarHeatSheet(heat: JarHeat, setting: PrintSetting, words: Words): PaperDocument {
  const { say } = words
  const { run, values, samplesCount, cuts, why } = heat
  const title = say('heat:paper-title')
  const { steps, scale } = greysOf(cuts.map(({ cellsC }) => cellsC))
  return documentOf(setting, words, {
    title,
    typePt: 10.5,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title, lines: [say('heat:paper-lead')], strongLines: [say('heat:does-not-change-directions')] },
      {
        kind: 'columns',
        columns: [
          ...cuts.map((cut, index) => ({
            share: 1,
            blocks: cutBlocks(cut, run, { steps: steps[index]!, scale }, words),
          })),
          { share: 1.1, blocks: [{ kind: 'facts', columns: 1, facts: setUp(run, words) }] },
        ],
      },
      { kind: 'heading', level: 2, text: say('heat:paper-curves') },
      curves(heat, words),
      { kind: 'line', text: momentsLine(heat.picture, words), strength: 'small' },
      {
        kind: 'facts',
        columns: 3,
        facts: [
          factOf({ label: say('heat:number-end-of-hold'), value: values.endOfHoldC }, words),
          factOf(
            {
              label: say('heat:number-lethality'),
              value: values.lethalityMin,
              note: say('heat:number-lethality-note'),
            },
            words,
          ),
          factOf({ label: say('heat:number-cooling'), value: values.coolingShareFraction }, words),
        ],
      },
      { kind: 'line', text: say('heat:band-of', { samples: samplesCount }), strength: 'small' },
      { kind: 'notice', title: say('heat:why-rule'), lines: wordAll(why.rule, words) },
      {
        kind: 'line',
        text: say(run.pack === 'packed solid' ? 'heat:packed-solid' : 'heat:free-brine'),
        strength: 'small',
      },
      { kind: 'line', text: say('heat:made-up'), strength: 'small' },
    ),
  })
}

function setUp(run: MadeUpRun, { say }: Words): Fact[] {
  const fact = (label: string, value: string): Fact => ({ label, value })
  const minutes = (value: number) => formatQuantity({ value: Math.round(value), unit: 'Min' })
  return [
    fact(say('heat:slide-jar'), say(`canner:run-screen-${run.jar}`)),
    fact(say('heat:slide-pack'), say(run.pack === 'packed solid' ? 'heat:why-pack-tight' : 'heat:why-pack-loose')),
    fact(say('heat:slide-height'), formatQuantity({ value: Math.round(run.elevationM), unit: 'M' })),
    fact(say('heat:slide-gauge'), formatQuantity({ value: psi(run.gaugeKPa), unit: 'PsiGauge' })),
    ...(run.gaugeReadsHighKPa === 0
      ? []
      : [fact(say('heat:slide-reads-high'), formatQuantity({ value: psi(run.gaugeReadsHighKPa), unit: 'PsiGauge' }))]),
    fact(say('heat:slide-vent'), minutes(run.ventMin)),
    fact(say('heat:slide-hold'), minutes(run.holdMin)),
    fact(say('heat:slide-fill'), formatQuantity({ value: Math.round(run.fillC), unit: 'C' })),
    fact(say('heat:slide-cool'), minutes(run.coolDownMin)),
  ]
}

const psi = (kPa: number) => Math.round((kPa / KPA_PER_PSI) * 10) / 10

function cutBlocks(
  cut: CutJar,
  run: MadeUpRun,
  { steps, scale }: { readonly steps: readonly number[]; readonly scale: readonly string[] },
  words: Words,
): Block[] {
  const { say } = words
  const isLoose = run.pack !== 'packed solid'
  const atText = formatQuantity({ value: Math.round(cut.atMin), unit: 'Min' })
  const at = (id: string) => cut.values.find((value) => value.id === id)
  const middle = at('coldSpotC')!
  const others = (['wallC', 'liquidC'] as const).flatMap((id) => {
    const value = at(id)
    return value ? [say(`heat:paper-cut-${id}`, { temperature: formatReckoned(value) })] : []
  })
  const middleText = say(isLoose ? 'heat:paper-cut-kernel' : 'heat:paper-cut-middle', {
    temperature: formatReckoned(middle),
  })
  const title = say(`heat:paper-cut-${cut.moment}`, { minute: atText })
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'line', text: title, strength: 'strong' },
        {
          kind: 'cut-jar',
          heightMm: 40,
          ringsM: cut.ringsM,
          levelsM: cut.levelsM,
          steps,
          scale,
          isLoose,
          alt: [title, middleText, ...others].join(' '),
        },
      ],
    },
    ...[middleText, ...others].map((text) => ({ kind: 'line', text, strength: 'small' }) as const),
  ]
}

function curves({ run, picture, band }: JarHeat, { say }: Words): CurvesBlock {
  const { moments, stepS } = picture
  const lastMin = Math.ceil(Math.min(moments.endMin, moments.zeroMin + AFTER_ZERO_MIN))
  const perMin = 60 / stepS
  const minutes = Array.from({ length: lastMin + 1 }, (_, minute) => minute)
  const line = (name: string, stroke: 'heavy' | 'plain' | 'dashed' | 'dotted', curve: Float64Array) => ({
    name,
    stroke,
    points: minutes.flatMap((minute) => {
      const celsius = curve[minute * perMin]
      return celsius === undefined ? [] : [[minute, celsius] as const]
    }),
  })
  return {
    kind: 'curves',
    heightMm: 50,
    across: minuteAxis(lastMin),
    ...temperatureAxes(),
    lines: [
      line(say('heat:curve-canner'), 'heavy', picture.cannerC),
      line(say(run.pack === 'packed solid' ? 'heat:curve-middle' : 'heat:curve-kernel'), 'plain', picture.coldSpotC),
      ...(picture.wallC ? [line(say('heat:curve-glass'), 'dashed', picture.wallC)] : []),
      ...(picture.liquidC ? [line(say('heat:curve-liquid'), 'dotted', picture.liquidC)] : []),
    ],
    band: {
      name: say('heat:curve-band'),
      points: minutes.flatMap((minute) =>
        minute < band.lowC.length ? [[minute, band.lowC[minute]!, band.highC[minute]!] as const] : [],
      ),
    },
    marks: MOMENTS.map((name) => moments[name]),
    alt: say('heat:curves-alt'),
  }
}

/** What each number above the curves stands for. */
function momentsLine({ moments }: JarPicture, { say }: Words): string {
  return MOMENTS.map((name, index) =>
    say('heat:table-moment', {
      number: index + 1,
      name: say(`heat:moment-${name}`),
      minute: { value: Math.round(moments[name]), unit: 'Min' },
    }),
  ).join(' · ')
}
