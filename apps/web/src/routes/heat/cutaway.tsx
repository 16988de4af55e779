/** A jar cut through the middle, coloured by temperature, with lines of equal temperature and their numbers. */
import { cToF, type JarFrames } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { memo } from 'react'
import { useWords } from '../../words.tsx'
import { contour } from './contours.ts'
import { COOLEST_C, colourOf, STEP_C, STEPS_C, stepOf } from './heat-colours.ts'

const WIDTH = 300
const HEIGHT = 360
const BASE = 340
const MIDDLE = WIDTH / 2

/** The box of a drawing whose jar begins at `top`, its lid just inside. */
const boxBelow = (top: number) => `0 ${top - 20} ${WIDTH} ${HEIGHT - top + 20}`

const degrees = (valueC: number) => formatQuantity({ value: Math.round(valueC * 10) / 10, unit: 'C' })

/** A solid pack: every cell of the cross-section at this minute. */
export const SolidJar = memo(function SolidJar({
  frames,
  minute,
}: {
  readonly frames: JarFrames
  readonly minute: number
}) {
  const { say } = useWords()
  const { nr, nz, rFacesM, zFacesM } = frames
  const at = Math.min(frames.framesC.length - 1, Math.round(minute))
  const framesC = frames.framesC[at]!
  const perM = Math.min((WIDTH - 24) / 2 / rFacesM[nr]!, (BASE - 40) / zFacesM[nz]!)
  const x = (r: number) => MIDDLE + r * perM
  const y = (z: number) => BASE - z * perM
  const middleC = frames.coolestC[at]!
  const coolest = Math.min(...framesC)
  const hottest = Math.max(...framesC)
  // Few enough lines to read their numbers.
  const apartC = hottest - coolest > 25 ? 2 * STEP_C : STEP_C
  const levels = [...STEPS_C].filter((level) => level > coolest && level < hottest && level % apartC === 0)
  return (
    <svg
      className="heat-drawing"
      viewBox={boxBelow(y(zFacesM[nz]!))}
      role="img"
      aria-label={say('heat:cut-alt-solid', {
        minute: { value: at, unit: 'Min' },
        middle: degrees(middleC),
        glass: degrees(frames.wallC[at]!),
      })}
    >
      {runsOf(framesC, nr, nz).map(({ j, fromRing, toRing, step }) => {
        const top = y(zFacesM[j + 1]!)
        const foot = y(zFacesM[j]!)
        const near = rFacesM[fromRing]! * perM
        const far = rFacesM[toRing + 1]! * perM
        return (
          <path
            key={`${j}-${fromRing}`}
            d={`M${MIDDLE + near} ${top}h${far - near}V${foot + 0.4}h${near - far}zM${MIDDLE - near} ${top}h${near - far}V${foot + 0.4}h${far - near}z`}
            fill={colourOf(step)}
          />
        )
      })}
      {levels.map((level) => {
        const pieces = contour({ framesC, nr, nz, rFacesM, zFacesM }, level)
        const d = pieces
          .map(([fr, fz, tr, tz]) => `M${x(fr)} ${y(fz)}L${x(tr)} ${y(tz)}M${x(-fr)} ${y(fz)}L${x(-tr)} ${y(tz)}`)
          .join('')
        const place = pieces.toSorted((a, b) => a[1] - b[1])[Math.floor(pieces.length / 2)]
        return (
          <g key={level}>
            <path d={d} className="heat-line-under" />
            <path d={d} className="heat-line-over" />
            {place && (
              <text x={x(place[0])} y={y(place[1])} textAnchor="middle" className="heat-on-colour">
                {Math.round(cToF(level))}°
              </text>
            )}
          </g>
        )
      })}
      <text y={y(zFacesM[nz]! * 0.5)} textAnchor="middle" className="heat-on-colour heat-strong">
        <tspan x={MIDDLE}>{formatQuantity({ value: Math.round(middleC * 10) / 10, unit: 'C' }, 'alone')}</tspan>
        <tspan x={MIDDLE} dy="1.4em">
          {formatQuantity({ value: Math.round(cToF(middleC)), unit: 'F' }, 'alone')}
        </tspan>
      </text>
      <JarOutline halfWidth={rFacesM[nr]! * perM} top={y(zFacesM[nz]!)} />
    </svg>
  )
})

/** Cells of a level that share a step stand as one. */
function runsOf(framesC: Float64Array, nr: number, nz: number) {
  const runs: { readonly j: number; readonly fromRing: number; readonly toRing: number; readonly step: number }[] = []
  for (let j = 0; j < nz; j += 1) {
    let fromRing = 0
    for (let i = 1; i <= nr; i += 1) {
      const step = stepOf(framesC[fromRing * nz + j]!)
      if (i < nr && stepOf(framesC[i * nz + j]!) === step) continue
      runs.push({ j, fromRing, toRing: i - 1, step })
      fromRing = i
    }
  }
  return runs
}

/** Loose kernels: one liquid that moves, and kernels that follow it. */
export const LooseJar = memo(function LooseJar({
  isQuart,
  glassC,
  liquidC,
  kernelC,
  minute,
}: {
  readonly isQuart: boolean
  readonly glassC: number
  readonly liquidC: number
  readonly kernelC: number
  readonly minute: number
}) {
  const { say } = useWords()
  const halfWidth = isQuart ? 104 : 96
  const top = isQuart ? 40 : 84
  const inner = halfWidth - 9
  const waterTop = top + 48
  return (
    <svg
      className="heat-drawing"
      viewBox={boxBelow(top)}
      role="img"
      aria-label={say('heat:cut-alt-loose', {
        minute: { value: Math.round(minute), unit: 'Min' },
        kernel: degrees(kernelC),
        liquid: degrees(liquidC),
        glass: degrees(glassC),
      })}
    >
      <rect x={MIDDLE - halfWidth} y={top} width={2 * halfWidth} height={BASE - top} fill={colourOf(stepOf(glassC))} />
      <rect x={MIDDLE - inner} y={top} width={2 * inner} height={waterTop - top} fill="var(--paper)" />
      <rect
        x={MIDDLE - inner}
        y={waterTop}
        width={2 * inner}
        height={BASE - 9 - waterTop}
        fill={colourOf(stepOf(liquidC))}
      />
      {kernels(inner, waterTop, BASE - 9).map(({ cx, cy }) => (
        <ellipse
          key={`${cx} ${cy}`}
          cx={cx}
          cy={cy}
          rx="13"
          ry="10"
          fill={colourOf(stepOf(kernelC))}
          stroke="var(--ink)"
          strokeWidth="1.5"
        />
      ))}
      <JarOutline halfWidth={halfWidth} top={top} />
      <Told y={top + 30} name={say('heat:curve-glass')} text={degrees(glassC)} />
      <Told y={waterTop + (BASE - waterTop) * 0.3} name={say('heat:curve-liquid')} text={degrees(liquidC)} />
      <Told y={waterTop + (BASE - waterTop) * 0.68} name={say('heat:curve-kernel')} text={degrees(kernelC)} />
    </svg>
  )
})

function Told({ y, name, text }: { readonly y: number; readonly name: string; readonly text: string }) {
  return (
    <g>
      <rect x={MIDDLE - 84} y={y - 19} width="168" height="44" fill="var(--paper)" stroke="var(--ink)" />
      <text x={MIDDLE} y={y - 3} textAnchor="middle">
        {name}
      </text>
      <text x={MIDDLE} y={y + 17} textAnchor="middle" className="heat-strong">
        {text}
      </text>
    </g>
  )
}

/** Kernels lie in rows, every other one shifted, as loosely as they are drawn. */
function kernels(inner: number, top: number, foot: number) {
  const columnPx = 36
  const rowPx = 25
  const shiftPx = 14
  const rows = Math.floor((foot - top - 14) / rowPx)
  const columns = Math.floor((2 * inner - 20 - shiftPx) / columnPx)
  const left = MIDDLE - ((columns - 1) * columnPx + shiftPx) / 2
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_unused, k) => ({
      cx: left + columnPx * k + (row % 2 === 0 ? 0 : shiftPx),
      cy: foot - 14 - rowPx * row,
    })),
  ).flat()
}

/** Glass, shoulder and lid. */
function JarOutline({ halfWidth, top }: { readonly halfWidth: number; readonly top: number }) {
  return (
    <g fill="none" stroke="var(--ink)" strokeWidth="3">
      <path d={`M${MIDDLE - halfWidth} ${top}V${BASE}H${MIDDLE + halfWidth}V${top}z`} />
      <path d={`M${MIDDLE - halfWidth - 4} ${top}v-14h${2 * halfWidth + 8}v14`} fill="var(--paper)" />
    </g>
  )
}

/** The scale of colours with its numbers; `hotC` and `coldC` are what is in the jar now. */
export const ColourScale = memo(function ColourScale() {
  const { say } = useWords()
  const numbered = STEPS_C.filter((level) => level % 20 === 0)
  return (
    <figure className="heat-scale">
      <figcaption>{say('heat:scale-name')}</figcaption>
      <div className="heat-scale-bar" aria-hidden="true">
        {STEPS_C.map((level, step) => (
          <span key={level} style={{ background: colourOf(step) }} />
        ))}
      </div>
      <ol className="heat-scale-numbers">
        {numbered.map((level) => (
          <li key={level} style={{ left: `${((level - COOLEST_C) / (STEP_C * STEPS_C.length)) * 100}%` }}>
            <span>{Math.round(cToF(level))} °F</span>
            <span>{level} °C</span>
          </li>
        ))}
      </ol>
    </figure>
  )
})
