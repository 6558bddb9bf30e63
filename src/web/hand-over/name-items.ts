import { fieldLabel, sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import { handOver as say } from '../words/hand-over.js';
import type { FieldView, FileView, PreviewAnswer } from './hand-over-answers.js';

/** `'People: Date of birth (p1)'`: which of the items of a list stands behind it. */
export function nameField({ section, path }: Pick<FieldView, 'section' | 'path'>): string {
  const label = fieldLabel(section, path, 'en') ?? path.slice(path.lastIndexOf('/') + 1);
  const [, , item] = path.split('/');
  return `${sectionTitle(section, 'en')}: ${label}${item === undefined ? '' : ` (${item})`}`;
}

export function nameFile({ name, id }: Pick<FileView, 'name' | 'id'>): string {
  return name ?? id;
}

/** What leaves with a file is decided with the file. */
const WITH_FILES = 'line';

/** Whether a sender may choose about a kind: notes that a lawyer asked for are let go by nobody. */
export function mayChoose(kind: string | null, { kinds }: Pick<PreviewAnswer, 'kinds'>): boolean {
  return kind !== 'privileged' && kinds.some((one) => one.kind === kind);
}

export function nameKind(kind: string | null, { kinds }: Pick<PreviewAnswer, 'kinds'>): string {
  if (kind === WITH_FILES) return say.fileLines;
  return kinds.find((one) => one.kind === kind)?.what ?? say.unplaced;
}

/** What a choice names: a kind, a field or a file. */
export function nameChoice(what: string, preview: PreviewAnswer): string {
  const field = preview.fields.find(({ section, path }) => `${section}:${path}` === what);
  if (field !== undefined) return nameField(field);
  const file = preview.files.find(({ id }) => id === what);
  return file === undefined ? nameKind(what, preview) : nameFile(file);
}
