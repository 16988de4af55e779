/**
 * PrintView: a document to look at, print from this device (no network needed), or fetch as a PDF from the house server.
 * Props: document, children? (choices above it).
 */
import { type PaperDocument, PRINT_CSS, renderHtml } from '@crib/paper'
import { type ReactNode, useMemo, useState } from 'react'
import { createPortal } from 'react-dom'
import { ButtonRow, FieldError, NextAction, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import './print-view.css'

export function PrintView({
  document: made,
  children,
}: {
  readonly document: PaperDocument
  readonly children?: ReactNode
}) {
  const { say } = useWords()
  const rendered = useMemo(() => {
    try {
      return { html: renderHtml(made) }
    } catch (error) {
      return { failure: error instanceof Error ? error.message : String(error) }
    }
  }, [made])
  return (
    <>
      <Passage>
        {rendered.html !== undefined && (
          <NextAction onClick={() => window.print()}>{say('shell:print-now')}</NextAction>
        )}
        <Pdf made={made} />
        {children}
      </Passage>
      {rendered.html === undefined ? (
        <Passage>
          <FieldError>{say('shell:print-does-not-fit', { why: rendered.failure })}</FieldError>
        </Passage>
      ) : (
        <>
          <style>{PRINT_CSS}</style>
          {/* The sheet's own titles stand below this one. */}
          <h2 className="only-read-aloud">{made.title}</h2>
          <section
            className="paper-look"
            // biome-ignore lint/a11y/noNoninteractiveTabindex: a sheet wider than the phone must be reachable by keyboard
            tabIndex={0}
            aria-label={made.title}
            // biome-ignore lint/security/noDangerouslySetInnerHtml: made by renderHtml, which escapes every text
            dangerouslySetInnerHTML={{ __html: rendered.html }}
          />
          {createPortal(
            // biome-ignore lint/security/noDangerouslySetInnerHtml: made by renderHtml, which escapes every text
            <div className="paper-for-the-printer" dangerouslySetInnerHTML={{ __html: rendered.html }} />,
            window.document.body,
          )}
        </>
      )}
    </>
  )
}

function Pdf({ made }: { readonly made: PaperDocument }) {
  const { say } = useWords()
  const [state, setState] = useState<'idle' | 'asked' | 'unreached'>('idle')
  const fetchPdf = async () => {
    setState('asked')
    try {
      const answer = await fetch('/api/paper', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(made),
      })
      if (!answer.ok) throw new Error(String(answer.status))
      const url = URL.createObjectURL(await answer.blob())
      const link = window.document.createElement('a')
      link.href = url
      link.download = `${made.title.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '')}.pdf`
      link.click()
      // Some browsers still read it after the click.
      setTimeout(() => URL.revokeObjectURL(url), 60_000)
      setState('idle')
    } catch {
      setState('unreached')
    }
  }
  return (
    <>
      <ButtonRow>
        <SideAction onClick={fetchPdf} disabled={state === 'asked'}>
          {say('shell:print-pdf')}
        </SideAction>
      </ButtonRow>
      {state === 'unreached' && <p role="status">{say('shell:print-pdf-unreached')}</p>}
    </>
  )
}
