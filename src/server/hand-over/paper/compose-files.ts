import { PACKET_FILES, type ManifestFile } from '../../../../shared/hand-over/packet.js';
import { isJsonObject, type JsonObject } from '../../../../shared/record/json-value.js';
import type { EvidenceFile } from '../../../../shared/record/evidence-section.js';
import { tellTime } from '../../../../shared/report/tell-value.js';
import { localTime } from '../../../../shared/time/tell-time.js';
import type { Block } from './blocks.js';
import { type Names, nameOf } from './name-things.js';
import type { PaperMatter } from './paper-matter.js';

/** Photographs as they leave, each with its caption; then every other file by what is said of it. */
export function composeFiles({ plan, evidence, pictures, timeZone }: PaperMatter, names: Names): Block[] {
  const said = linesOf(plan.record.attachments['evidence']);
  const files = evidence.map((file, place) => ({ file, line: said.get(file.evidence?.id ?? ''), place }));
  return files
    .sort((one, other) => rank(one.line) - rank(other.line))
    .map(({ file, line, place }): Block => {
      const content = pictures.get(file.evidence?.id ?? '');
      return {
        kind: 'picture',
        title: `${KINDS[line?.kind ?? 'document']} ${place + 1}`,
        caption: line?.about.caption ?? 'Nobody has written what it shows.',
        lines: [
          ...(content === undefined && line?.kind === 'photo' ? [NOT_DRAWN] : []),
          ...wordsAbout(line, names, timeZone),
          ...custodyOf(file, timeZone),
        ],
        ...(content === undefined ? {} : { content }),
      };
    });
}

const NOT_DRAWN = 'This picture could not be drawn here: look at the file itself.';

const KINDS: Readonly<Record<EvidenceFile['kind'], string>> = {
  photo: 'Photograph',
  video: 'Video',
  audio: 'Recording',
  document: 'Paper',
};

const rank = (line: EvidenceFile | undefined): number => (line?.kind === 'photo' ? 0 : 1);

/** The lines about files as they leave: the list itself may have been masked. */
function linesOf(section: object | undefined): ReadonlyMap<string, EvidenceFile> {
  const { files = [] } = (section ?? {}) as {
    files?: readonly (Omit<EvidenceFile, 'about'> & Partial<EvidenceFile>)[];
  };
  return new Map(
    files
      .filter((file) => isJsonObject(file as unknown as JsonObject))
      .map((file) => [file.id, { ...file, about: file.about ?? {} }]),
  );
}

function wordsAbout(line: EvidenceFile | undefined, names: Names, timeZone: string): string[] {
  const { takenBy, people, craft } = line?.about ?? {};
  const shown = [
    ...(people ?? []).map((id) => nameOf(names, 'person', id) ?? id),
    ...(craft ?? []).map((id) => nameOf(names, 'craft', id) ?? id),
  ];
  const camera = line?.captured?.local;
  return [
    ...(shown.length === 0 ? [] : [`Shows: ${shown.join(', ')}.`]),
    ...(takenBy === undefined ? [] : [`Taken by ${takenBy}.`]),
    ...(camera === undefined
      ? []
      : [`By the camera’s own clock: ${localTime(camera, 0)}${zoneWords(line)}.`]),
    ...(line === undefined ? [] : [`Received ${tellTime(line.receivedAt, timeZone)}.`]),
  ];
}

const zoneWords = (line: EvidenceFile | undefined): string =>
  line?.captured?.offset === undefined ? ', zone not written' : ` (UTC${line.captured.offset})`;

function custodyOf({ path, without, sha256, evidence, custody }: ManifestFile, timeZone: string): string[] {
  return [
    `File ${path}`,
    `SHA-256 ${sha256}`,
    ...(without === undefined
      ? []
      : [
          `A copy without ${without}; SHA-256 of the original, which is kept: ${evidence?.sha256 ?? 'not said'}.`,
        ]),
    ...custody.map(({ at, by, what }) => `${tellTime(at, timeZone)}: ${what} (${by}).`),
    ...(custody.length === 0 ? [`Its custody stands in ${PACKET_FILES.manifest}.`] : []),
  ];
}
