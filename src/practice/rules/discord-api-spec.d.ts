// Types for `discord-api-spec/zod`, which ships none: every export used here is a schema with `safeParse`.
declare module 'discord-api-spec/zod' {
  import type { ZodType } from 'zod'

  export const CreateMessageInteractionCallbackRequestSchema: ZodType
  export const UpdateMessageInteractionCallbackRequestSchema: ZodType
  export const ApplicationCommandAutocompleteCallbackRequestSchema: ZodType
  export const ModalInteractionCallbackRequestSchema: ZodType
  export const IncomingWebhookUpdateRequestPartialSchema: ZodType
  export const IncomingWebhookRequestPartialSchema: ZodType
  export const ApplicationCommandUpdateRequestSchema: ZodType
  export const MessageCreateRequestSchema: ZodType
  export const MessageEditRequestPartialSchema: ZodType
  export const CreateTextThreadWithMessageRequestSchema: ZodType
  export const CreateTextThreadWithoutMessageRequestSchema: ZodType
  export const CreateForumThreadRequestSchema: ZodType
  export const UpdateThreadRequestPartialSchema: ZodType
}
