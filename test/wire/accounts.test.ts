import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AccountChangeDto, AccountCreationDto } from '../../shared/wire/accounts-account.dto.js';
import {
  DeviceCreationDto,
  DeviceEnrolmentDto,
  PinConfirmationDto,
} from '../../shared/wire/accounts-device.dto.js';
import { readMembers } from '../../shared/wire/accounts-read.js';
import {
  CertificateChangeDto,
  CertificateDto,
  findDayOrderFaults,
  RosterEntryChangeDto,
  RosterEntryDto,
} from '../../shared/wire/accounts-roster.dto.js';
import { newPasswordFault, pinFault } from '../../shared/wire/accounts-secrets.js';
import { PasswordChangeDto, PinChangeDto, SignInDto } from '../../shared/wire/accounts-session.dto.js';
import { ACCOUNT_ANSWERS, ACCOUNT_REQUESTS } from '../../src/server/accounts/account-schemas.js';

const CLASSES: Record<string, new () => object> = {
  SignIn: SignInDto,
  PasswordChange: PasswordChangeDto,
  PinChange: PinChangeDto,
  AccountCreation: AccountCreationDto,
  AccountChange: AccountChangeDto,
  DeviceCreation: DeviceCreationDto,
  DeviceEnrolment: DeviceEnrolmentDto,
  PinConfirmation: PinConfirmationDto,
  RosterEntryCreation: RosterEntryDto,
  RosterEntryChange: RosterEntryChangeDto,
  CertificateCreation: CertificateDto,
  CertificateChange: CertificateChangeDto,
};

const ajv = new Ajv2020({ strictTypes: false, strictTuples: false, allErrors: true });
addFormats.default(ajv);
ajv.addVocabulary(['components']);
ajv.addSchema({ $id: 'http://desk/', components: { schemas: { ...ACCOUNT_REQUESTS, ...ACCOUNT_ANSWERS } } });
const bySchema = (name: string) => ajv.compile({ $ref: `http://desk/#/components/schemas/${name}` });

type Document = Record<string, unknown>;
const examplesOf = (schema: Document | undefined): Document[] => (schema?.['examples'] ?? []) as Document[];

/** Documents with one member spoilt, in every way that a client could get it wrong. */
function spoilt(example: Document): Document[] {
  const wrong: unknown[] = [
    undefined,
    null,
    '',
    '  ',
    7,
    -1,
    true,
    [],
    {},
    'x'.repeat(600),
    'two\nlines',
    'bat',
  ];
  return Object.keys(example).flatMap((name) =>
    wrong.map((value) => {
      const copy = { ...example, [name]: value };
      if (value === undefined) delete copy[name];
      return copy;
    }),
  );
}

describe('the schema and the class of a request', () => {
  it('are there for each other', () => {
    expect(Object.keys(CLASSES).sort()).toEqual(Object.keys(ACCOUNT_REQUESTS).sort());
  });

  it.each(Object.entries(CLASSES))('of %s agree on every example and on what is wrong', (name, type) => {
    const validate = bySchema(name);
    const examples = examplesOf(ACCOUNT_REQUESTS[name]);
    expect(examples.length).toBeGreaterThan(0);
    for (const example of examples)
      expect([validate(example), readMembers(type, example)]).toMatchObject([true, { ok: true }]);
    const wrong = examples.flatMap((example) => [...spoilt(example), { ...example, extra: 1 }]);
    for (const document of wrong) {
      expect({ document, good: readMembers(type, document).ok }).toEqual({
        document,
        good: validate(document),
      });
    }
  });
});

it.each(Object.entries(ACCOUNT_ANSWERS))('the example of the answer %s is one', (name, schema) => {
  const validate = bySchema(name);
  for (const example of examplesOf(schema))
    expect([validate(example), validate.errors]).toEqual([true, null]);
});

describe('a fault', () => {
  it.each([
    [SignInDto, { signInName: 'ana' }, '/password', 'Missing: give text of 1 to 256 characters.'],
    [AccountCreationDto, { name: 'Ana', signInName: 'ana', role: 'staf' }, '/role', /Did you mean staff\?$/],
    [AccountChangeDto, { activ: true }, '/activ', 'No such member: did you mean active?'],
    [RosterEntryDto, { from: '2026-02-30' }, '/from', 'Must be a day of the calendar, such as 2026-06-13.'],
    [PinChangeDto, { password: 'x', pin: 1234 }, '/pin', 'Must be 4 to 8 digits, as text.'],
  ] as const)('of %o in %j is at %s: %s', (type, input, pointer, detail) => {
    const reading = readMembers<object>(type, input);
    const fault = reading.ok ? undefined : reading.errors.find((error) => error.pointer === pointer);
    expect(fault?.detail).toMatch(detail);
  });

  it.each([null, undefined, [], 'text', 7])('of %j is that it is no object', (input) => {
    expect(readMembers(SignInDto, input)).toMatchObject({ ok: false, errors: [{ pointer: '' }] });
  });
});

// NIST SP 800-63B-4, section 3.1.1.2: 15 characters, no composition rules, each code point one character.
describe('a new password', () => {
  const ana = { name: 'Ana Ruiz', signInName: 'ana.ruiz' };

  it.each([
    ['low tide, red buoy', null],
    ['fifteen letters', null],
    ['fourteen chars', /at least 15/],
    ['aaaaaaaaaaaaaaaa', /same few characters/],
    ['abababababababab', /same few characters/],
    ['ana ruizana ruiz', /your own name/],
    ['Ana.Ruiz2026 Ana Ruiz', /your own name/],
    ['ana.ruiz likes the low tide', null],
    ['шлюпка у причала', null],
    ['🛟'.repeat(14), /at least 15/],
    ['x1y2z3'.repeat(50), /at most 256/],
  ] as const)('%s: %s', (password, fault) => {
    const found = newPasswordFault(password, ana);
    if (fault === null) expect(found).toBeNull();
    else expect(found).toMatch(fault);
  });

  it('is never refused for its kinds of characters', () => {
    const letters = fc.string({ unit: fc.constantFrom(...'abcdefghijklmnop'), minLength: 15, maxLength: 60 });
    fc.assert(
      fc.property(
        letters.filter((text) => new Set(text).size >= 6),
        (password) => {
          expect(newPasswordFault(password, { name: 'Q. Z.', signInName: 'qzqz' })).toBeNull();
        },
      ),
    );
  });
});

describe('a PIN', () => {
  it.each([
    ['4071', true],
    ['83920417', true],
    ['1357', true],
    ['1234', false],
    ['87654', false],
    ['0000', false],
    ['123', false],
    ['123456789', false],
    ['12a4', false],
    ['４０７１', false],
    [4071, false],
    [null, false],
  ])('%j may be one: %s', (pin, good) => {
    expect(pinFault(pin) === null).toBe(good);
  });
});

describe('two days in their order', () => {
  it.each([
    ['2026-06-13', '2026-06-13', 0],
    ['2026-06-13', '2026-06-12', 1],
    [null, '2026-06-12', 0],
    ['2026-06-13', undefined, 0],
  ])('%s to %s has %d faults', (first, last, faults) => {
    expect(findDayOrderFaults(first, last, '/to')).toHaveLength(faults);
  });
});
