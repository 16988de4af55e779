/** `npm start`: installs what is missing, builds what changed, opens the book. Arguments after `--` go to the server. */
import { ensureInstalled, ensureWebBuilt, run } from './house.mjs'

ensureInstalled()
ensureWebBuilt()
run('npm', ['run', '--silent', 'serve', '--', ...process.argv.slice(2)])
