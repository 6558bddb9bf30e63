import { KnownDto } from './record-compounds.js';
import { membersOf, type JsonSchema, type Member, type Shape, type ValueRule } from './record-members.js';

/**
 * The JSON Schema (2020-12) of a class of the record, made from the declarations that the reader goes by.
 * @example schemaOf(SameEventDto) // { type: 'object', additionalProperties: false, required: ['incident'], … }
 */
export function schemaOf(shape: Shape): JsonSchema {
  const members = [...membersOf(shape)];
  const required = members.filter(([, member]) => member.required).map(([name]) => name);
  return {
    type: 'object',
    additionalProperties: false,
    ...(required.length > 0 ? { required } : {}),
    properties: Object.fromEntries(members.map(([name, member]) => [name, memberSchema(member)])),
  };
}

function memberSchema(member: Member): JsonSchema {
  switch (member.kind) {
    case 'value':
      return ruleSchema(member.rule);
    case 'known':
      return knownSchema(member.rule);
    case 'part':
      return schemaOf(member.shape());
    case 'items':
      return { type: 'array', items: schemaOf(member.shape()) };
  }
}

function knownSchema(rule: ValueRule): JsonSchema {
  const fact = schemaOf(KnownDto);
  const properties = fact['properties'] as Record<string, JsonSchema>;
  return { ...fact, properties: { ...properties, value: ruleSchema(rule) } };
}

/** A value that is always an object has no schema of its own but that of its class. */
function ruleSchema({ schema, part }: ValueRule): JsonSchema {
  return part !== undefined && Object.keys(schema).length === 0 ? schemaOf(part()) : schema;
}
