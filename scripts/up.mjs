// `npm run up`: installs, builds and starts Tellwright, and prints its address.
import { spawn } from 'node:child_process'
import { createServer } from 'node:net'
import { installPackages, mustRun } from './machine.mjs'

// Nothing this project starts calls home.
process.env.NEXT_TELEMETRY_DISABLED = '1'

const HOST = '127.0.0.1'

/** @returns the port asked for, or the next free one after it. */
const freePort = wanted =>
  new Promise(resolve => {
    const server = createServer()
    server.once('error', () => resolve(freePort(wanted + 1)))
    server.listen(wanted, HOST, () => server.close(() => resolve(wanted)))
  })

installPackages()
mustRun('npm', ['run', '--silent', 'build'])
const port = await freePort(Number(process.env.PORT ?? 4300))
const server = spawn('node_modules/.bin/next', ['start', '--hostname', HOST, '--port', String(port)], {
  stdio: ['inherit', 'pipe', 'inherit'],
})
server.stdout.on('data', chunk => {
  process.stdout.write(chunk)
  if (String(chunk).includes('Ready'))
    console.log(`\n  Tellwright is open at http://${HOST}:${port}  (Ctrl + C ends it)\n`)
})
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal))
server.on('exit', code => process.exit(code ?? 0))
