import type { JSX } from 'preact';
import type { ScenePoint } from '../../../shared/record/scene-section.js';
import { drawScene } from '../../../shared/scene/draw-scene.js';
import type { ReadScene } from '../../../shared/scene/read-scene.js';
import { SHEET, type SceneShape } from '../../../shared/scene/scene-shape.js';
import { language } from '../words/speak.js';

interface SceneSketchProps {
  readonly scene: ReadScene;
  /** What a screen reader calls it; the text of it stands beside. */
  readonly label: string;
  readonly onTap?: (point: ScenePoint) => void;
}

/** The drawn sheet. A tap is one way to put something; the buttons of the thing are the other. */
export function SceneSketch({ scene, label, onTap }: SceneSketchProps) {
  const tap = (event: JSX.TargetedMouseEvent<SVGSVGElement>): void => {
    const box = event.currentTarget.getBoundingClientRect();
    onTap?.([
      ((event.clientX - box.left) / box.width) * SHEET - SHEET / 2,
      SHEET / 2 - ((event.clientY - box.top) / box.height) * SHEET,
    ]);
  };
  return (
    <svg
      class={onTap === undefined ? 'scene-sheet' : 'scene-sheet taking'}
      viewBox={`0 0 ${SHEET} ${SHEET}`}
      role="img"
      aria-label={label}
      onClick={tap}
    >
      {drawScene(scene, language()).map((shape, index) => (
        <Shape key={index} shape={shape} />
      ))}
    </svg>
  );
}

function Shape({ shape }: { shape: SceneShape }) {
  switch (shape.shape) {
    case 'line':
      return (
        <polyline
          class="scene-line"
          points={pointsOf(shape.points)}
          stroke-width={shape.weight}
          {...(shape.dashed && { 'stroke-dasharray': '4 3' })}
        />
      );
    case 'area':
      return <polygon class={shape.filled ? 'scene-full' : 'scene-hollow'} points={pointsOf(shape.points)} />;
    case 'ring':
      return (
        <circle
          class={shape.filled ? 'scene-full' : 'scene-hollow'}
          cx={shape.at[0]}
          cy={shape.at[1]}
          r={shape.radius}
        />
      );
    case 'words':
      return (
        <text
          class="scene-words"
          x={shape.at[0]}
          y={shape.at[1]}
          font-size={shape.size}
          text-anchor={shape.align}
        >
          {shape.words}
        </text>
      );
  }
}

function pointsOf(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y]) => `${x},${y}`).join(' ');
}
