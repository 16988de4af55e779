/** A file of text from this device, read here and handed on as if it had been pasted. */
import { useId } from 'react'
import { Frame } from './field-frame.tsx'

export function TextFileField({
  label,
  mostCharacters,
  onText,
}: {
  readonly label: string
  /** What stands beyond is left out. */
  readonly mostCharacters: number
  readonly onText: (text: string) => void
}) {
  const id = useId()
  return (
    <Frame id={id} label={label}>
      <input
        id={id}
        className="written"
        type="file"
        accept=".csv,.txt,text/csv,text/plain"
        onChange={async (event) => {
          const [file] = event.target.files ?? []
          if (file) onText((await file.text()).slice(0, mostCharacters))
        }}
      />
    </Frame>
  )
}
