// cellwary completion: what a shell needs to complete the words of this command line, made from the commands themselves.
import { Command } from 'commander'

export function completionCommand(others: () => Promise<readonly Command[]>): Command {
  return new Command('completion')
    .description(
      'Print a script with which bash completes these commands: source <(cellwary completion). zsh: after bashcompinit.',
    )
    .action(async () => console.log(scriptFor([...(await others()), completionCommand(others)])))
}

/** What may follow each command, by the words before it. */
export function scriptFor(commands: readonly Command[]): string {
  // What is below a command before it: a shell takes the first that fits.
  const branches = commands.flatMap(command => [
    ...command.commands.map(one => branch(`${command.name()} ${one.name()}`, flagsOf(one))),
    branch(command.name(), [...namesOf(command.commands), ...flagsOf(command)]),
  ])
  return `# Completion of cellwary for bash; zsh takes it after: autoload -U +X bashcompinit && bashcompinit
_cellwary() {
  local before="\${COMP_WORDS[*]:1:COMP_CWORD-1}" offered=""
  case "$before " in
    " ") offered="${namesOf(commands).join(' ')} --help --version" ;;
${branches.join('\n')}
  esac
  COMPREPLY=($(compgen -W "$offered" -- "\${COMP_WORDS[COMP_CWORD]}"))
}
complete -o default -F _cellwary cellwary`
}

const namesOf = (commands: readonly Command[]): string[] => commands.map(one => one.name())
const flagsOf = (command: Command): string[] => [...command.options.flatMap(one => one.long ?? []), '--help']
const branch = (words: string, offers: readonly string[]): string =>
  `    "${words} "*) offered="${offers.join(' ')}" ;;`
