import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { common } from '../words/common.js';
import { Button } from './button.js';

interface DialogProps {
  readonly title: string;
  readonly children: ComponentChildren;
  /** Called on Escape and by the button that closes; without it there is neither. */
  readonly onClose?: () => void;
}

/** A question over the page, by the native element: the page behind is out of reach until it is answered. */
export function Dialog({ title, children, onClose }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const shown = dialog.current;
    if (shown !== null && !shown.open) shown.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog
      class="dialog"
      ref={dialog}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose?.();
      }}
    >
      <div class="section-head">
        <h2 id={id}>{title}</h2>
        {onClose !== undefined && (
          <Button look="plain" onPress={onClose}>
            {common.close}
          </Button>
        )}
      </div>
      {children}
    </dialog>
  );
}
