/**
 * docs/guidance.md as text: every table beside its source and standing, for a person with the page in hand.
 * Leaves out: reading and writing files (scripts/write-guidance-page.ts).
 */
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { GUIDANCE_TABLES, type GuidanceTable } from './tables.ts'

const MADE_FOR: Readonly<Record<Standing['madeFor'], string>> = {
  'this-food': 'made for this food',
  'lye-hominy': 'made for lye hominy',
  'neighbouring-food': 'made for a neighbouring food',
  none: 'no test for this food',
}

/** Markdown of the whole page. */
export function guidancePage(tables: readonly GuidanceTable[] = GUIDANCE_TABLES): string {
  const unchecked = tables.filter((table) => table.checkedBy === null).length
  return [
    `# Guidance tables, edition ${GUIDANCE_EDITION}`,
    '',
    'Made by `npm run docs` from packages/guidance/data; do not edit by hand.',
    'Each table is copied in the units of its page. Minutes and pressures are looked up here, never worked out.',
    '',
    `${tables.length} tables. ${unchecked} of them have not been compared with their page a second time.`,
    '',
    ...tables.flatMap(tableSection),
  ].join('\n')
}

function tableSection(table: GuidanceTable): string[] {
  const check = table.checkedBy ? `${table.checkedBy}, against ${table.checkedAgainst}` : 'not yet'
  return [
    `## ${table.title}`,
    '',
    `- file: \`${table.id}.json\``,
    `- standing: ${MADE_FOR[table.standing.madeFor]}; ${table.standing.now}`,
    `- source: \`${[table.source, ...table.alsoSources].join('`, `')}\`; ${table.locator}`,
    `- read: ${table.seen}${table.retrievedOn ? `, ${table.retrievedOn}` : ''}`,
    `- copied by ${table.transcribedBy}; checked: ${check}`,
    '',
    ...markdownTable(table.rows),
    '',
    ...table.notes.map((note) => `> ${note}\n`),
  ]
}

function markdownTable(rows: GuidanceTable['rows']): string[] {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [
    line(columns),
    line(columns.map(() => '---')),
    ...rows.map((row) => line(columns.map((column) => String(row[column] ?? '').replaceAll('|', '\\|')))),
  ]
}
