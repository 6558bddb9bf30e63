export type Language = 'en' | 'es';

const KEPT_AS = 'desk-language';

/** The language of the reader: as chosen on this device, else the browser's, else English. */
export function language(): Language {
  const chosen = localStorage.getItem(KEPT_AS) ?? navigator.language;
  return chosen.toLowerCase().startsWith('es') ? 'es' : 'en';
}

/** Every page is drawn anew in it. What was typed and not kept would be lost, so only pages without fields offer it. */
export function chooseLanguage(chosen: Language): void {
  localStorage.setItem(KEPT_AS, chosen);
  location.reload();
}

/**
 * The words of a page in the language of the reader. The Spanish has the type of the English, so that a missing word
 * stops the type check. Pages for the office alone have English only.
 * @example const say = speak(en, es); … <h1>{say.title}</h1>
 */
export function speak<Words>(en: Words, es: Words = en): Words {
  return language() === 'es' ? es : en;
}
