/** Proves the import rules of ARCHITECTURE.md on the real imports, and that it looked at enough modules to mean it. */
import { createRequire } from 'node:module'
import { cruise, type ICruiseResult } from 'dependency-cruiser'

/** Raise it as the project grows: a tool that reads nothing passes everything. */
const MODULES_AT_LEAST = 700

export interface ImportReport {
  readonly modulesCount: number
  readonly faults: readonly string[]
}

export async function checkImports(paths: readonly string[], baseDir = process.cwd()): Promise<ImportReport> {
  const { forbidden, options } = createRequire(import.meta.url)('./import-rules.cjs')
  const { output } = await cruise([...paths], { ...options, baseDir, ruleSet: { forbidden }, validate: true })
  const { modules, summary } = output as ICruiseResult
  return {
    modulesCount: modules.filter(({ source }) => /^(packages|apps|scripts)\//.test(source)).length,
    faults: summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
  }
}

if (import.meta.main) {
  const { modulesCount, faults } = await checkImports(['packages', 'apps'])
  for (const fault of faults) console.error(fault)
  const enough = modulesCount >= MODULES_AT_LEAST
  console.log(`imports: ${modulesCount} modules looked at, ${faults.length} faults`)
  if (!enough) console.error(`imports: fewer than ${MODULES_AT_LEAST} modules were looked at`)
  process.exit(faults.length === 0 && enough ? 0 : 1)
}
