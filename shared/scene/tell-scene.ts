import type { SceneLineKind, SceneMovement, ScenePoint, SceneThing } from '../record/scene-section.js';
import { fieldWords, type FieldLanguage } from '../record/field-words/tell-field.js';
import { compassPoint, normalBearing } from './compass-point.js';
import type { PlacedLine, PlacedMark, ReadScene } from './read-scene.js';
import { sceneWords, type SceneWords } from './scene-words.js';

/** How a kind is called, for a thing without a name of its own. */
export function sceneKindName(kind: SceneThing | SceneLineKind | null, language: FieldLanguage): string {
  const { sceneThing, sceneLine } = fieldWords(language).values;
  const names: Readonly<Record<string, string>> = { ...sceneThing, ...sceneLine };
  return names[kind ?? 'other'] ?? sceneThing.other;
}

/** `tellDirection(225, 'en')` is `'SW (225°)'`. */
export function tellDirection(degrees: number, language: FieldLanguage): string {
  const { points, direction } = sceneWords[language];
  return direction(points[compassPoint(degrees)] ?? '', Math.round(normalBearing(degrees)) % 360);
}

/**
 * The sketch in sentences, for whoever cannot see it and for the text of a paper: the sheet, wind and current, each
 * thing from the middle of the sheet, each line from end to end.
 */
export function tellScene(scene: ReadScene, language: FieldLanguage): string[] {
  const words = sceneWords[language];
  if (scene.marks.length === 0 && scene.lines.length === 0) return [words.empty];
  const { metresAcross, topBearing, windFrom, currentToward } = scene;
  const direction = (degrees: number): string => tellDirection(degrees, language);
  return [
    words.top(direction(topBearing)),
    metresAcross === null ? `${words.notToScale}.` : words.wide(words.length(metresAcross)),
    ...(windFrom === null ? [] : [`${words.wind(direction(windFrom))}.`]),
    ...(currentToward === null ? [] : [`${words.current(direction(currentToward))}.`]),
    ...scene.marks.map((mark) => tellMark(mark, scene, language)),
    ...scene.lines.map((line) => tellLine(line, scene, language)),
  ];
}

function tellMark(mark: PlacedMark, scene: ReadScene, language: FieldLanguage): string {
  const words = sceneWords[language];
  const isCraft = mark.kind === 'our-craft' || mark.kind === 'other-craft';
  const heading =
    mark.heading === null ? words.noHeading : words.heading(tellDirection(mark.heading, language));
  const parts = [
    mark.at === null ? words.nowhere : tellPlace(mark.at, scene, words),
    ...(isCraft ? [heading] : []),
    ...(isCraft || mark.movement !== 'unknown' ? [tellMovement(mark.movement, language)] : []),
  ];
  return `${nameWithKind(mark.name, mark.kind, language)}: ${parts.join(', ')}.`;
}

function tellLine({ name, kind, points }: PlacedLine, scene: ReadScene, language: FieldLanguage): string {
  const words = sceneWords[language];
  const [from, to] = [points[0], points.at(-1)];
  const run =
    from === undefined || to === undefined
      ? words.nowhere
      : words.run(tellPlace(from, scene, words), tellPlace(to, scene, words));
  return `${nameWithKind(name, kind, language)}: ${run}.`;
}

function nameWithKind(
  name: string,
  kind: SceneThing | SceneLineKind | null,
  language: FieldLanguage,
): string {
  const called = sceneKindName(kind, language);
  return name === called ? name : `${name} (${called.toLowerCase()})`;
}

function tellMovement(movement: SceneMovement, language: FieldLanguage): string {
  if (movement === 'unknown') return sceneWords[language].noMovement;
  return fieldWords(language).values.sceneMovement[movement].toLowerCase();
}

/** From the middle of the sheet: in metres where the sheet has a width, else in tenths of the way to the edge. */
function tellPlace(
  [across, up]: ScenePoint,
  { metresAcross, topBearing }: ReadScene,
  words: SceneWords,
): string {
  const reach = Math.hypot(across, up);
  const metres = metresAcross === null ? null : Math.round((reach / 200) * metresAcross);
  const tenths = Math.round(reach / 10);
  if ((metres ?? tenths) === 0) return words.inMiddle;
  const bearing = topBearing + (Math.atan2(across, up) * 180) / Math.PI;
  const point = words.points[compassPoint(bearing)] ?? '';
  return words.away(metres === null ? words.tenths(tenths) : words.metres(metres), point);
}
