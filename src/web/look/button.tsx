import type { ComponentChildren, JSX } from 'preact';

type Press = (event: MouseEvent) => void;

interface ButtonProps {
  readonly children: ComponentChildren;
  readonly onPress?: Press;
  /** `main`: ink, one a page. `act`: the accent, for "act now" alone. `plain`: text with a line under it. */
  readonly look?: 'main' | 'act' | 'second' | 'plain';
  readonly type?: 'button' | 'submit';
  /** Said while it works; the button stays where it is, keeps the focus and takes no second press. */
  readonly busy?: boolean | undefined;
  readonly label?: string;
  readonly pressed?: boolean;
  readonly form?: string;
}

/** A button. It is never disabled without a word: what cannot be done now says why when it is pressed. */
export function Button({
  children,
  onPress,
  look = 'second',
  type = 'button',
  busy = false,
  label,
  pressed,
  form,
}: ButtonProps) {
  const press = (event: JSX.TargetedMouseEvent<HTMLButtonElement>): void => {
    if (busy) event.preventDefault();
    else onPress?.(event);
  };
  return (
    <button
      class={`button ${look}`}
      type={type}
      onClick={press}
      {...(busy && { 'aria-disabled': 'true' as const })}
      {...(label !== undefined && { 'aria-label': label })}
      {...(pressed !== undefined && { 'aria-pressed': pressed })}
      {...(form !== undefined && { form })}
    >
      {children}
    </button>
  );
}
