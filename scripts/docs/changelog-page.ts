/** The changelog: every fragment of `changes/` under "Unreleased", in order of file name. */

export interface Fragment {
  readonly name: string
  readonly text: string
}

export function changelogPage(fragments: readonly Fragment[]): string {
  const items = fragments.map(({ name, text }) => {
    const said = text.trim().replace(/\s+/g, ' ').replace(/^- /, '')
    if (said === '') throw new TypeError(`changes/${name} is empty`)
    return `- ${said}`
  })
  return `# Changes

Made from the files in \`changes/\` by \`npm run docs\`: one file for each change a keeper would notice.

## Unreleased

${items.join('\n')}
`
}
