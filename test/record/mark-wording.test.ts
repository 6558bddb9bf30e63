import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markWording } from '../../shared/record/wording/mark-wording.js';
import { isOwnWords } from '../../shared/record/wording/own-words.js';

const said = (text: string) => markWording(text, 'en').map(({ kind, said: phrase }) => `${kind}: ${phrase}`);

describe('the wording aid', () => {
  it.each([
    ['It was his fault.', ['blame: his fault']],
    ['She was careless and drunk.', ['blame: careless', 'guess: drunk']],
    ['He should have looked.', ['blame: should have looked']],
    ['They shouldn’t have gone out.', ['blame: shouldn’t have']],
    ['The PWC must have hit a stump.', ['guess: must have']],
    ['Probably way too fast.', ['guess: Probably', 'blame: way too fast']],
    ['He violated the rules, that is negligence.', ['law: violated', 'law: negligence']],
    ['BUI. Not reportable.', ['law: BUI', 'law: Not reportable']],
    ['He failed\nto turn.', ['blame: failed\nto']],
    ['Fue su culpa, debía haber mirado.', ['blame: Fue su culpa', 'blame: debía haber']],
    ['Estaba borracho, quizas iba muy rapido.', ['guess: borracho', 'guess: quizas', 'blame: muy rapido']],
    ['Cometió una infracción.', ['law: infracción']],
  ])('marks in %j', (text, marks) => {
    expect(said(text)).toEqual(marks);
  });

  it.each([
    'The PWC turned left about 30 ft before the dock. Its operator was looking at the tube behind.',
    'He held a can. He said: two beers since noon.',
    'Speed on the display: 28 mph, read off by Ann.',
    'We do not know who drove.',
    'The default channel is 16. Liaison with the warden at 14:05.',
    'La lancha giró a la izquierda. El operador miraba hacia atrás.',
    'Habló con dificultad y se apoyaba en el muelle.',
    '',
  ])('marks nothing in what was seen: %j', (text) => {
    expect(markWording(text, 'en')).toEqual([]);
  });

  it('asks in the language of the reader for what was seen, whatever language was written', () => {
    expect(markWording('He was drunk.', 'es')[0]?.ask).toContain('¿Qué se vio');
    expect(markWording('Iba borracho.', 'en')[0]?.ask).toContain('What was seen');
  });

  it('marks places of the text itself, in order, none over another', () => {
    const words = fc.constantFrom(
      'fault',
      'his fault',
      'must have',
      'been',
      'drunk',
      'too fast',
      'way',
      'culpa',
      'é',
      '🚤',
      '\n',
      '.',
    );
    fc.assert(
      fc.property(
        fc.array(words).map((all) => all.join(' ')),
        (text) => {
          let end = 0;
          for (const mark of markWording(text, 'en')) {
            expect(mark.start).toBeGreaterThanOrEqual(end);
            expect(text.slice(mark.start, mark.end)).toBe(mark.said);
            end = mark.end;
          }
        },
      ),
    );
  });

  it('is quick with the longest text there can be', () => {
    const text = 'he may not have been paying attention and so on '.repeat(1000);
    expect(markWording(text, 'en')).toHaveLength(0);
  });
});

describe('the wording aid reads', () => {
  it.each([
    ['account', '/whatHappened', 'saw', true],
    ['account', '/whatHappened', 'told', false],
    ['timeline', '/entries/e1/what', undefined, true],
    ['call', '/said', undefined, false],
    ['call', '/late/careSince', 'told', false],
    ['statements', '/statements/s1/words', undefined, false],
    ['statements', '/statements/s1/translation', undefined, false],
    ['check-in', '/renterWords', undefined, false],
    ['emergency-response', '/calls/h1/said', undefined, false],
    ['people', '/people/p1/injuries/i1/extent', 'saw', false],
    ['people', '/people/p1/name', undefined, false],
  ])('%s %s, known %s: %s', (section, path, known, own) => {
    expect(isOwnWords(section, path, known)).toBe(own);
  });
});
