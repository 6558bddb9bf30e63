import { schemaOf } from '../../../shared/wire/record-schema.js';
import { ScopeAnswerRequestDto } from '../../../shared/wire/scope-answer-request.dto.js';

const ANSWER = {
  aid: 'left-on-purpose',
  jurisdictions: ['us'],
  answer: 'not-reportable',
  reason:
    'She jumped from the anchored pontoon to swim; the state said on the telephone that it counts none such.',
};

const text = { type: 'string' };

/** Schemas of the answers whether an occurrence is reportable at all. */
export const SCOPE_ANSWER_SCHEMAS = {
  ScopeAnswerDetails: { ...schemaOf(ScopeAnswerRequestDto), examples: [ANSWER] },
  ScopeAnswer: {
    type: 'object',
    required: ['id', 'aid', 'jurisdictions', 'answer', 'reason', 'by', 'account', 'role', 'at'],
    properties: {
      id: { type: 'string', format: 'uuid' },
      version: { const: 1 },
      aid: text,
      jurisdictions: { type: 'array', items: text },
      answer: { enum: ['reportable', 'not-reportable'] },
      reason: text,
      by: { ...text, description: 'Who signed it.' },
      account: text,
      role: text,
      at: { type: 'string', format: 'date-time' },
    },
  },
};
