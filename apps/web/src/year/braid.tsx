/**
 * Braid: the year's corn drawn as one braid that splits. Every width is a weight from the book, to one scale.
 * Props: balance. Words stand beside each strand, so the drawing itself is hidden from a screen reader.
 */

import type { BalanceOfYear, Strand } from '@crib/planning/year'
import { formatNumber, formatWeight } from '@crib/wording'
import { usePreferences } from '../preferences.tsx'
import { useWords } from '../words.tsx'

/** Drawing units are sixteenths of a rem, so that the braid grows with the words, and gives way on a narrow page. */
const TRUNK = 112
const REACH = 150
const DROP = 22
/** Inner radius of a strand's bend. */
const BEND = 14
/** Thinner than this cannot be seen; the strand is then a thread, and the words say the weight. */
const THREAD = 1.5

export function Braid({ balance }: { readonly balance: BalanceOfYear }) {
  const { say } = useWords()
  const { measureFirst } = usePreferences()
  const { strands, broughtInKg } = balance
  const scale = broughtInKg > 0 ? TRUNK / broughtInKg : 0
  let remaining = TRUNK
  return (
    <div className="braid">
      <KernelPattern />
      <div className="braid-top" style={{ paddingLeft: units(REACH + 12) }}>
        <Trunk width={TRUNK} />
        <p className="braid-name">{say('shell:strand-brought-in')}</p>
        <p className="braid-weight">{formatWeight(broughtInKg, measureFirst)}</p>
      </div>
      <ul>
        {strands.map((strand, index) => {
          const width = strand.massKg * scale
          const before = remaining
          remaining = Math.max(before - width, 0)
          const isLast = index === strands.length - 1
          return (
            <li key={strand.id} style={{ paddingLeft: units(REACH + 12) }}>
              {isLast ? (
                <Hanging width={before} />
              ) : (
                <>
                  <Trunk width={remaining} />
                  <Split from={before} width={Math.max(width, THREAD)} isGap={strand.isGap} />
                </>
              )}
              <p className="braid-name">
                {say(strand.name)}
                {strand.isGap && <span className="braid-gap"> {say('shell:strand-gap')}</span>}
              </p>
              <p className="braid-weight">
                {formatWeight(strand.massKg, measureFirst)}{' '}
                <span className="braid-share">{shareText(strand, broughtInKg)}</span>
              </p>
            </li>
          )
        })}
      </ul>
    </div>
  )
}

function shareText({ massKg }: Strand, broughtInKg: number): string {
  return broughtInKg > 0 ? `${formatNumber((100 * massKg) / broughtInKg, 1)} %` : ''
}

function units(count: number): string {
  return `calc(${count} * var(--unit))`
}

function Trunk({ width }: { readonly width: number }) {
  if (width <= 0) return null
  return (
    <svg className="braid-trunk" style={{ width: units(width) }} aria-hidden="true" focusable="false">
      <rect width="100%" height="100%" className="braid-corn" />
      <rect width="100%" height="100%" fill="url(#kernels)" />
    </svg>
  )
}

/** The end of the braid: what still hangs in the crib, drawn to its tip. */
function Hanging({ width }: { readonly width: number }) {
  if (width <= 0) return null
  const height = 92
  const tip = `M0 0V54C0 76 ${width * 0.3} 88 ${width / 2} ${height}C${width * 0.7} 88 ${width} 76 ${width} 54V0z`
  return (
    <svg
      className="braid-split"
      viewBox={`0 0 ${width} ${height}`}
      style={{ width: units(width), height: units(height) }}
      aria-hidden="true"
      focusable="false"
    >
      <path d={tip} className="braid-corn" />
      <path d={tip} fill="url(#kernels)" />
    </svg>
  )
}

/** One strand leaving the trunk's right side, as thick when it lies as when it hung. */
function Split({ from, width, isGap }: { readonly from: number; readonly width: number; readonly isGap: boolean }) {
  const left = from - width
  const low = DROP + width
  const bend = DROP - BEND
  const path = `M${left} 0V${bend}A${BEND + width} ${BEND + width} 0 0 0 ${from + BEND} ${low}H${REACH}V${DROP}H${from + BEND}A${BEND} ${BEND} 0 0 1 ${from} ${bend}V0z`
  return (
    <svg
      className="braid-split"
      viewBox={`0 0 ${REACH} ${low + 2}`}
      style={{ width: units(REACH), height: units(low + 2) }}
      aria-hidden="true"
      focusable="false"
    >
      <path d={path} className={isGap ? 'braid-lost' : 'braid-corn'} />
      {!isGap && <path d={path} fill="url(#kernels)" />}
    </svg>
  )
}

/** Rows of kernels, as on an ear. */
function KernelPattern() {
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true" focusable="false">
      <pattern id="kernels" width="14" height="11" patternUnits="userSpaceOnUse">
        <path
          d="M2 2.500c3-1.500 7-1.500 10 0 .8 2.500.8 4 0 6.500-3 1.200-7 1.200-10 0-.8-2.500-.8-4 0-6.500z"
          className="braid-kernel"
        />
      </pattern>
    </svg>
  )
}
