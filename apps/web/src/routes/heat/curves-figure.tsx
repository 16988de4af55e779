/** The curves of a made-up jar over its run: canner, glass, liquid, slowest place with its band, and the lethal rate below. */
import type { CurveBand, JarMoments, JarPicture } from '@crib/science'
import { memo } from 'react'
import { useWords } from '../../words.tsx'
import { BOTTOM, HEIGHT, LEFT, NumberedMoment, RIGHT, type Scale, TemperatureAxes, TOP } from './drawing-frame.tsx'
import { COOLEST_C, HOTTEST_C } from './heat-colours.ts'

const RATE_HEIGHT = 70
const MARKS = ['steamMin', 'ventClosedMin', 'atPressureMin', 'heatOffMin', 'zeroMin'] as const

interface CurvesProps {
  readonly picture: JarPicture
  /** One reading a minute, and whether it is of this very jar. */
  readonly band: { readonly curve: CurveBand; readonly isOfThisJar: boolean } | null
  /** Middle of the glass once a minute, where the cross-section tells it. [°C] */
  readonly glassC: Float64Array | null
  readonly withRate: boolean
  readonly atMin: number
  readonly width: number
}

/** Minutes drawn: until the jars come out. */
export function lastMinuteOf({ zeroMin, endMin }: JarMoments): number {
  return Math.min(endMin, Math.ceil((zeroMin + 10) / 5) * 5)
}

export const Curves = memo(function Curves(props: CurvesProps) {
  const { picture, band, glassC, withRate, atMin, width } = props
  const { say } = useWords()
  const lastMin = lastMinuteOf(picture.moments)
  const height = HEIGHT + (withRate ? RATE_HEIGHT : 0)
  const x = (minute: number) => LEFT + (minute / lastMin) * (width - LEFT - RIGHT)
  const y = (celsius: number) =>
    HEIGHT - BOTTOM - ((celsius - COOLEST_C) / (HOTTEST_C - COOLEST_C)) * (HEIGHT - TOP - BOTTOM)
  const perMin = 60 / picture.stepS
  const path = (curve: Float64Array, each = perMin) => pathOf(curve, each, lastMin, x, y)
  const wall = picture.wallC ? path(picture.wallC) : glassC ? path(glassC, 1) : null
  return (
    <svg
      className="heat-drawing"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label={say('heat:curves-alt')}
    >
      <Axes x={x} y={y} width={width} lastMin={lastMin} />
      {MARKS.map((name, index) => (
        <NumberedMoment key={name} atX={x(picture.moments[name])} index={index} />
      ))}
      {band && (
        <path
          data-curve="band"
          d={bandPath(band.curve, lastMin, x, y)}
          fill="var(--corn-fill)"
          fillOpacity={band.isOfThisJar ? 0.55 : 0}
          stroke="var(--kernel-line)"
          strokeWidth="1.5"
          strokeDasharray={band.isOfThisJar ? undefined : '4 4'}
        />
      )}
      <path d={path(picture.cannerC)} fill="none" stroke="var(--ink)" strokeWidth="4.5" />
      {wall && <path d={wall} fill="none" stroke="var(--ink)" strokeWidth="1.75" strokeDasharray="9 5" />}
      {picture.liquidC && (
        <path d={path(picture.liquidC)} fill="none" stroke="var(--ink)" strokeWidth="2" strokeDasharray="1.5 5" />
      )}
      <path
        d={path(picture.coldSpotC)}
        fill="none"
        stroke="var(--handle)"
        strokeWidth="2.75"
        data-curve="slowest-place"
      />
      {withRate && <Rate picture={picture} x={x} width={width} lastMin={lastMin} />}
      <line x1={x(atMin)} x2={x(atMin)} y1={TOP} y2={height - 4} stroke="var(--focus)" strokeWidth="2.5" />
    </svg>
  )
})

function Axes({ x, y, width, lastMin }: { x: Scale; y: Scale; width: number; lastMin: number }) {
  const { say } = useWords()
  const minuteStep = width < 500 ? 40 : 20
  const minutes = Array.from({ length: Math.floor(lastMin / minuteStep) + 1 }, (_, i) => i * minuteStep)
  return (
    <g>
      <TemperatureAxes y={y} width={width} />
      {minutes.map((minute) => (
        <text key={minute} x={x(minute)} y={HEIGHT - 8} textAnchor={minute === 0 ? 'start' : 'middle'}>
          {minute === 0 ? say('heat:axis-minutes') : minute}
        </text>
      ))}
    </g>
  )
}

function Rate({ picture, x, width, lastMin }: { picture: JarPicture; x: Scale; width: number; lastMin: number }) {
  const { say } = useWords()
  const { rateFraction, stepS } = picture
  const perMin = 60 / stepS
  const top = HEIGHT + 20
  const foot = HEIGHT + RATE_HEIGHT - 4
  const most = Math.max(0.05, ...rateFraction)
  const y = (rate: number) => foot - (rate / most) * (foot - top)
  return (
    <g>
      <path
        data-curve="lethal-rate"
        d={`${pathOf(rateFraction, perMin, lastMin, x, y)}L${x(lastMin)} ${foot}L${x(0)} ${foot}Z`}
        fill="var(--corn-fill)"
        fillOpacity="0.55"
        stroke="var(--kernel-line)"
        strokeWidth="1.5"
      />
      <line x1={LEFT} x2={width - RIGHT} y1={foot} y2={foot} stroke="var(--ink)" strokeWidth="2" />
      <text x={LEFT} y={HEIGHT + 15} className="heat-strong">
        {say('heat:rate-name')}
      </text>
    </g>
  )
}

function pathOf(curve: Float64Array, perMin: number, lastMin: number, x: Scale, y: Scale): string {
  const last = Math.min(curve.length - 1, lastMin * perMin)
  let path = ''
  for (let i = 0; i <= last; i += 1) {
    path += `${i === 0 ? 'M' : 'L'}${x(i / perMin).toFixed(1)} ${y(curve[i]!).toFixed(1)}`
  }
  return path
}

function bandPath({ lowC, highC }: CurveBand, lastMin: number, x: Scale, y: Scale): string {
  const last = Math.min(lowC.length - 1, lastMin)
  const back = Array.from({ length: last + 1 }, (_, i) => last - i)
  return `${pathOf(highC, 1, last, x, y)}${back.map((i) => `L${x(i).toFixed(1)} ${y(lowC[i]!).toFixed(1)}`).join('')}Z`
}

/** What each kind of line is, drawn once more with its name. */
export function CurveKey({
  hasGlass,
  hasLiquid,
  isSolid,
}: {
  readonly hasGlass: boolean
  readonly hasLiquid: boolean
  readonly isSolid: boolean
}) {
  const { say } = useWords()
  const lines = [
    { name: say('heat:curve-canner'), width: 4.5, dash: undefined, stroke: 'var(--ink)' },
    ...(hasGlass ? [{ name: say('heat:curve-glass'), width: 1.75, dash: '9 5', stroke: 'var(--ink)' }] : []),
    ...(hasLiquid ? [{ name: say('heat:curve-liquid'), width: 2, dash: '1.5 5', stroke: 'var(--ink)' }] : []),
    {
      name: say(isSolid ? 'heat:curve-middle' : 'heat:curve-kernel'),
      width: 2.75,
      dash: undefined,
      stroke: 'var(--handle)',
    },
  ]
  return (
    <ul className="heat-key">
      {lines.map(({ name, width, dash, stroke }) => (
        <li key={name}>
          <svg width="44" height="14" aria-hidden="true" focusable="false">
            <line x1="0" x2="44" y1="7" y2="7" stroke={stroke} strokeWidth={width} strokeDasharray={dash} />
          </svg>
          {name}
        </li>
      ))}
      <li>
        <svg width="44" height="14" aria-hidden="true" focusable="false">
          <rect width="44" height="14" fill="var(--corn-fill)" fillOpacity="0.55" stroke="var(--kernel-line)" />
        </svg>
        {say('heat:curve-band')}
      </li>
    </ul>
  )
}
