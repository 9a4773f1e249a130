// The route of the bot's first answer to an interaction.
import { firstAnswer } from '../interactions/answer.ts'
import { type Route, route } from './route.ts'

export const interactionRoutes: readonly Route[] = [
  route(
    'POST /interactions/:id/:token/callback',
    ({ room, params, json, files, query }) =>
      firstAnswer(room, params['id'] ?? '', params['token'] ?? '', json, files, query.get('with_response') === 'true'),
    true,
  ),
]
