import type { FieldError } from '../../../shared/kernel/field-error.js';
import { element } from '../look/element.js';

/** Why there is no determination: each fault with the place in the facts where it is. */
export function showProblem(title: string, errors: readonly FieldError[]): HTMLElement[] {
  return [
    element('h2', { tabindex: '-1' }, 'No determination'),
    element(
      'div',
      { class: 'problem' },
      element('p', {}, element('strong', {}, `${title}.`)),
      element(
        'ol',
        {},
        ...errors.map(({ pointer, detail }) =>
          element('li', {}, pointer === '' ? null : element('code', {}, pointer), ' ', detail),
        ),
      ),
    ),
  ];
}
