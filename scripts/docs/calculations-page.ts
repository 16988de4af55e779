/** The list of public calculations as a page: what each asks, gives and rests on. */
import type { Calc, Field, Fields, Unit } from '@crib/science'
import { formatQuantity } from '@crib/wording'

const UNIT_NAMES: Partial<Record<Unit, string>> = {
  Count: 'count',
  Fraction: 'share of 1, shown in %',
  ClockMin: 'clock time',
}

export function calculationsPage(calcs: readonly Calc[]): string {
  return `# Calculations

Made from the catalogue by \`npm run docs\`; do not edit. Each one answers at the terminal (\`npm run crib -- reckon ID\`), over HTTP
(\`POST /api/calculations/ID\`) and on the workbench page. A number typed alone is in the unit named here; a number with a
unit ("9 lb") is converted. The examples are invented.

${calcs.map(({ id, question }) => `- [${id}](#${id}): ${question}`).join('\n')}

${calcs.map(calcSection).join('\n')}`
}

function calcSection({ id, title, question, inputs, outputs, sourceKeys, example }: Calc): string {
  const outputRows = Object.entries(outputs).map(([name, { label, unit }]) => row(`\`${name}\``, label, unitName(unit)))
  return `## ${id}

**${title}.** ${question}

| asks | what | limits |
|---|---|---|
${inputRows(inputs).join('\n')}

| gives | what | unit |
|---|---|---|
${outputRows.join('\n')}

Sources: ${sourceKeys.map((key) => `\`${key}\``).join(', ') || 'none; common practice or our own arithmetic'}

\`\`\`json
${JSON.stringify(example, null, 2)}
\`\`\`
`
}

function inputRows(fields: Fields, path = ''): string[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const own = row(
      `\`${path}${name}\``,
      field.optional ? `${field.label} (may be left out)` : field.label,
      limits(field),
    )
    if (field.kind === 'table') return [own, ...inputRows(field.columns, `${path}${name}[].`)]
    if (field.kind === 'record') return [own, ...inputRows(field.fields, `${path}${name}.`)]
    return [own]
  })
}

function limits(field: Field): string {
  switch (field.kind) {
    case 'quantity': {
      const [low, high] = [field.min, field.max].map((value) => formatQuantity({ value, unit: field.unit }, 'alone'))
      return `${low} to ${high} (\`${field.limitSource}\`)`
    }
    case 'count':
      return `whole number, ${field.min} to ${field.max} (\`${field.limitSource}\`)`
    case 'choice':
      return field.options.map((option) => `\`${option}\``).join(', ')
    case 'flag':
      return 'true or false'
    case 'text':
      return `text, at most ${field.maxLength} characters`
    case 'clock':
      return 'clock time `HH:MM`, next day `HH:MM+1`'
    case 'series':
      return `pairs of time (${unitName(field.timeUnit)}) and value (${unitName(field.unit)})`
    case 'table':
      return `rows, at most ${field.maxRows}`
    case 'record':
      return 'named values'
  }
}

function unitName(unit: Unit): string {
  return UNIT_NAMES[unit] ?? formatQuantity({ value: 0, unit }, 'alone').replace(/^0\s*/, '')
}

function row(...cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|').replace(/\s+/g, ' ')).join(' | ')} |`
}
