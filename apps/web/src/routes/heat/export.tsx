/** The picture taken along: as a drawing, as an image, as numbers, on paper. Each says that it changes no direction. */
import { pictureCsv } from '@crib/planning'
import { convert, type JarPicture, type MadeUpRun } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { memo, useState } from 'react'
import { createPortal } from 'react-dom'
import { ButtonRow, FieldError, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { handOver, pngOf, sheetOfDrawings } from './take-drawings.ts'
import type { BandNow } from './use-band.ts'

export const Export = memo(function Export({
  run,
  picture,
  now,
  isMadeUp,
}: {
  readonly run: MadeUpRun
  readonly picture: JarPicture
  readonly now: BandNow | null
  readonly isMadeUp: boolean
}) {
  const { say } = useWords()
  const [failure, setFailure] = useState<string | null>(null)
  const [printed, setPrinted] = useState<string | null>(null)
  const remarks = [
    say(isMadeUp ? 'heat:take-made-up' : 'heat:take-run'),
    say('heat:take-set', {
      jar: say(run.jar === 'quart' ? 'canner:run-screen-quart' : 'canner:run-screen-pint'),
      pack: say(run.pack === 'packed solid' ? 'heat:why-pack-tight' : 'heat:why-pack-loose'),
      pressure: { value: Number(convert(run.gaugeKPa, 'KPaGauge', 'PsiGauge').toFixed(1)), unit: 'PsiGauge' },
      height: formatQuantity({ value: Math.round(run.elevationM), unit: 'M' }),
      vent: { value: run.ventMin, unit: 'Min' },
      hold: { value: run.holdMin, unit: 'Min' },
    }),
    say('heat:does-not-change-directions'),
  ]
  const drawn = () => {
    const drawings = [...document.querySelectorAll<SVGSVGElement>('#picture svg.heat-drawing')]
    return sheetOfDrawings(drawings, say('heat:title'), remarks)
  }
  const attempt = (take: () => void | Promise<void>) => async () => {
    setFailure(null)
    try {
      await take()
    } catch (error) {
      setFailure(say('heat:take-failed', { why: error instanceof Error ? error.message : String(error) }))
    }
  }
  const band = now?.of === run ? now.band : undefined
  return (
    <>
      <ButtonRow>
        <SideAction onClick={attempt(() => handOver('heat-in-the-jar.svg', drawn().svg, 'image/svg+xml'))}>
          {say('heat:take-svg')}
        </SideAction>
        <SideAction onClick={attempt(async () => handOver('heat-in-the-jar.png', await pngOf(drawn()), 'image/png'))}>
          {say('heat:take-png')}
        </SideAction>
        <SideAction
          onClick={attempt(() =>
            handOver(
              'heat-in-the-jar.csv',
              pictureCsv({ picture, withRate: isMadeUp, remarks, ...(band && { band }) }),
              'text/csv',
            ),
          )}
        >
          {say('heat:take-csv')}
        </SideAction>
        <SideAction
          onClick={attempt(() => {
            setPrinted(drawn().svg)
            // Once the page has it.
            setTimeout(() => window.print(), 100)
          })}
        >
          {say('heat:take-print')}
        </SideAction>
      </ButtonRow>
      {failure && (
        <p role="alert">
          <FieldError>{failure}</FieldError>
        </p>
      )}
      {printed !== null &&
        createPortal(
          // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by this page; its words are escaped on the way
          <div className="paper-for-the-printer" dangerouslySetInnerHTML={{ __html: printed }} />,
          document.body,
        )}
    </>
  )
})
