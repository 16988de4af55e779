/** YieldByEars: ears and kernels counted at several places of a row. Props: planting, areaM2 (of the plot, where known). */
import type { PlantingFact } from '@crib/journal'
import { estimateByEars, gPerThousandOfKernelsPerOz } from '@crib/planning'
import { convert } from '@crib/science'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { ButtonRow, CountField, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { LengthField } from './length-field.tsx'
import { PER_OZ } from './plan-wish.ts'
import { typedLength } from './typed-length.ts'
import { YieldNumbers } from './yield-numbers.tsx'

const NONE = { ears: 0, rows: 8, along: 0 }

export function YieldByEars({
  planting,
  areaM2,
}: {
  readonly planting: PlantingFact
  readonly areaM2: number | undefined
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const perOz = Math.round(facts.seedLots[planting.seedLotId ?? '']?.kernelsPerOz ?? 110)
  const [typed, setTyped] = useHalfTyped(`yield:${planting.plantingId}:ears`, {
    places: [NONE, NONE, NONE],
    rowText: '',
    perOz,
    betweenText: planting.rowSpacingM === undefined ? '36 in' : typedLength(planting.rowSpacingM),
  })
  const [rowM, setRowM] = useState<number | null>(null)
  const [betweenM, setBetweenM] = useState<number | null>(null)
  const change = (part: Partial<typeof typed>) => setTyped({ ...typed, ...part })
  const changePlace = (index: number, part: Partial<typeof NONE>) =>
    change({ places: typed.places.map((place, i) => (i === index ? { ...place, ...part } : place)) })
  const counted = typed.places.filter(({ ears, rows, along }) => ears > 0 && rows > 0 && along > 0)
  const estimate =
    rowM === null || betweenM === null || counted.length === 0 || typed.perOz < PER_OZ.least
      ? null
      : estimateByEars({
          places: counted.map(({ ears, rows, along }) => ({
            earsCount: ears,
            kernelRows: rows,
            kernelsPerRow: along,
            rowFt: convert(rowM, 'M', 'Ft'),
          })),
          rowSpacingFt: convert(betweenM, 'M', 'Ft'),
          gPerThousand: gPerThousandOfKernelsPerOz(typed.perOz),
          areaM2,
        })
  return (
    <>
      <LengthField
        label={say('field:screen-yield-row-length')}
        hint={say('field:screen-plan-spacing-hint')}
        text={typed.rowText}
        onText={(rowText) => change({ rowText })}
        onMetres={setRowM}
        least={0.3}
        most={3000}
      />
      <LengthField
        label={say('field:screen-plan-between-rows')}
        text={typed.betweenText}
        onText={(betweenText) => change({ betweenText })}
        onMetres={setBetweenM}
        least={0.16}
        most={6}
      />
      <CountField
        label={say('field:screen-plan-per-oz')}
        value={typed.perOz}
        onValue={(value) => change({ perOz: value })}
        max={PER_OZ.most}
        error={typed.perOz < PER_OZ.least ? say('field:screen-plan-per-oz-outside') : null}
      />
      {typed.places.map(({ ears, rows, along }, index) => {
        const number = index + 1
        return (
          <fieldset className="field" key={number}>
            <legend>{say('field:screen-yield-place', { number })}</legend>
            <CountField
              label={say('field:screen-yield-place-ears', { number })}
              value={ears}
              onValue={(value) => changePlace(index, { ears: value })}
              max={10_000}
            />
            <CountField
              label={say('field:screen-yield-place-rows', { number })}
              value={rows}
              onValue={(value) => changePlace(index, { rows: value })}
              max={40}
            />
            <CountField
              label={say('field:screen-yield-place-along', { number })}
              value={along}
              onValue={(value) => changePlace(index, { along: value })}
              max={80}
            />
          </fieldset>
        )
      })}
      <ButtonRow>
        <SideAction onClick={() => change({ places: [...typed.places, NONE] })}>
          {say('field:screen-yield-another')}
        </SideAction>
      </ButtonRow>
      <YieldNumbers estimate={estimate} />
    </>
  )
}
