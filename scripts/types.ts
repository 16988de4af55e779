/** Type-checks every package and app with the native compiler; one process each, so a package sees only its own lib. */
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'

const projects = ['packages', 'apps']
  .flatMap((folder) => readdirSync(folder).map((name) => `${folder}/${name}`))
  .filter((project) => existsSync(`${project}/tsconfig.json`))

let failedCount = 0
for (const project of [...projects, '.']) {
  const run = spawnSync(process.execPath, ['node_modules/ts7/bin/tsc', '-p', project], { stdio: 'inherit' })
  if (run.status !== 0) {
    failedCount += 1
    console.error(`types: ${project} failed`)
  }
}
console.log(`types: ${projects.length + 1} projects checked, ${failedCount} failed`)
process.exit(failedCount === 0 ? 0 : 1)
