/** Qr: an address as a QR code, black on white in every theme, as a camera wants it. Props: content, label. */
import { qrSquares } from '@crib/paper'

/** Light squares around the code (ISO/IEC 18004). */
const QUIET = 4

export function Qr({ content, label }: { readonly content: string; readonly label: string }) {
  const squares = qrSquares(content)
  const edge = squares.length + 2 * QUIET
  const path = squares
    .flatMap((row, y) => row.map((black, x) => (black ? `M${x + QUIET} ${y + QUIET}h1v1h-1z` : '')))
    .join('')
  return (
    <svg
      viewBox={`0 0 ${edge} ${edge}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
      style={{ width: 'min(100%, 20rem)', background: '#fff', color: '#000' }}
    >
      <path d={path} fill="currentColor" />
    </svg>
  )
}
