// Asks what a log does not say, with its first rows to answer from.
import { type APIStringSelectComponent, ComponentType } from 'discord.js'
import type { ColumnChoice, LogAnswers, LogQuestion } from '../../readings/log/answers.ts'
import { bare, fenced, plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { cut, message, rows, type ShownMessage, small, text } from '../message/parts.ts'

/** What can be chosen, and what the choice adds to what is known about the file; the values stand in the menu. */
export type LogChoice = { readonly value: string; readonly label: string; readonly means: LogAnswers }

export function showLogQuestion(say: Say, question: LogQuestion, custom_id: string): ShownMessage {
  const menu: APIStringSelectComponent = {
    type: ComponentType.StringSelect,
    custom_id,
    placeholder: say('log.choose'),
    options: choicesOf(say, question).map(({ value, label }) => ({ value, label: cut(label, 100) })),
  }
  const table = question.rows.map(row => row.map(bare).join(' │ ')).join('\n')
  return message([
    text(`### ${say('log.asks')}\n**${ask(say, question)}**`),
    text(`${say('log.rows')}\n${fenced(table)}`),
    ...rows([menu], 1),
    small(say('caution.line')),
  ])
}

function ask(say: Say, question: LogQuestion): string {
  switch (question.code) {
    case 'which-column':
      return say(`log.ask.${question.role}`)
    case 'which-unit':
      if (question.counter)
        return say('log.ask.counter', { label: plain(question.label), factor: question.counter.factor })
      return say('log.ask.unit', { label: plain(question.label) })
    case 'which-clock':
      return say('log.ask.clock', { label: plain(question.label) })
    case 'columns-look-wrong': {
      const values = { voltage: plain(named(say, question.voltage)), current: plain(named(say, question.current)) }
      return say(`log.ask.${question.because}`, values)
    }
  }
}

/** At most 25, as many as Discord's menus hold; a table with more columns has its likely ones among the first. */
export function choicesOf(say: Say, question: LogQuestion): LogChoice[] {
  switch (question.code) {
    case 'which-column':
      return question.choices.slice(0, 25).map(choice => ({
        value: `column-${choice.column}`,
        label: bare([named(say, choice), choice.examples.join(', ')].filter(Boolean).join(' · ')),
        means: { columns: { [question.role]: choice.column } },
      }))
    case 'which-unit':
      return question.options.map(unit => ({
        value: unit,
        label: say(`log.unit.${unit}`),
        means: { units: { [question.role]: unit } },
      }))
    case 'which-clock':
      return question.options.map(clock => ({
        value: clock,
        label: say(clock === 'h:mm' ? 'log.clock.h-mm' : 'log.clock.m-ss'),
        means: { clock },
      }))
    case 'columns-look-wrong': {
      const { voltage, current } = question
      return [
        { value: 'right', label: say('log.as-they-stand'), means: { columnsAreRight: true } },
        {
          value: 'swapped',
          label: say('log.swap'),
          means: { columns: { voltage: current.column, current: voltage.column }, columnsAreRight: true },
        },
      ]
    }
  }
}

const named = (say: Say, { column, label }: ColumnChoice): string =>
  label === '' ? say('log.column', { number: column + 1 }) : say('log.column.named', { number: column + 1, label })
