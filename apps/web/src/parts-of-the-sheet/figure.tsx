/**
 * Figure: a picture with its words. Props: title, children (an svg with role="img" and aria-labelledby, or aria-hidden),
 *   table (the same facts as a table; always there, behind one tap).
 * Ledger: a plain table. Props: caption?, head (cells), rows (cells; a { number } cell is set right in stamped figures).
 */
import type { ReactNode } from 'react'
import { useWords } from '../words.tsx'

export function Figure({
  title,
  children,
  table,
}: {
  readonly title: string
  readonly children: ReactNode
  readonly table: ReactNode
}) {
  const { say } = useWords()
  return (
    <figure className="figure">
      <figcaption>{title}</figcaption>
      {children}
      <details className="behind">
        <summary>{say('shell:as-table')}</summary>
        {table}
      </details>
    </figure>
  )
}

export type Cell = ReactNode | { readonly number: string }

export function Ledger({
  caption,
  head,
  rows,
}: {
  readonly caption?: string
  readonly head: readonly string[]
  readonly rows: readonly { readonly key: string; readonly cells: readonly Cell[] }[]
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
    <section className="ledger-wrap" tabIndex={0} aria-label={caption ?? head.join(', ')}>
      <table className="ledger">
        {caption && <caption>{caption}</caption>}
        <thead>
          <tr>
            {head.map((text) => (
              <th key={text} scope="col">
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, cells }) => (
            <tr key={key}>
              {cells.map((cell, index) =>
                index === 0 ? (
                  <th key={head[index]} scope="row">
                    {content(cell)}
                  </th>
                ) : (
                  <td key={head[index]} className={isNumber(cell) ? 'number' : undefined}>
                    {content(cell)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function isNumber(cell: Cell): cell is { readonly number: string } {
  return typeof cell === 'object' && cell !== null && 'number' in cell
}

function content(cell: Cell): ReactNode {
  return isNumber(cell) ? cell.number : cell
}
