"use client";

import { isRedirectError } from "next/dist/client/components/redirect-error";
import { unstable_rethrow, usePathname } from "next/navigation";
import {
  type FormEvent,
  type ReactNode,
  useActionState,
  useContext,
  useEffect,
  useId,
  useRef,
  useState,
  useTransition,
} from "react";
import { FarmRevision } from "./farm-revision.client";
import { FormContext } from "./form-context.client";
import { type FormAction, type FormState, FRESH, unanswered } from "./form-state";
import { forgetTyping, KeptTyping, keepTyping, type Typed, typedIn } from "./kept-typing.client";
import { Refusal } from "./refusal.client";
import { REVISION, SAVE_KEY, SaveKeys } from "./sending";

type Props = {
  action: FormAction;
  /** The words of the button; left out where the children bring buttons of their own. */
  submit?: string;
  hidden?: Readonly<Record<string, string | number>>;
  /** The last change of the farm when what the form shows was read; that of the page where the form keeps nothing longer than the page. */
  revision?: number;
  children?: ReactNode;
  /** Beside the button. */
  beside?: ReactNode;
  /** What a screen reader calls the form. */
  label?: string;
  isQuiet?: boolean;
  /** Where the caller keeps what is typed: takes what this browser had kept of it. */
  onRefill?: (typed: Typed) => void;
};

/**
 * A form that a server action takes or refuses. When it is refused nothing was written, and when no answer
 * comes it may be sent again, since one filled form is written once: each problem stands beside its
 * field and in a list at the top, the first wrong field takes the focus, and what was typed stays.
 */
export function Form(props: Props) {
  const { action, submit, hidden = {}, revision, children, beside, label, isQuiet = false, onRefill } = props;
  const place = usePlace(props);
  const { state, dispatch, isPending, send, forget } = useSending(action, place);
  const pageRevision = useContext(FarmRevision);
  const seen = state.isBehind ? pageRevision : (revision ?? pageRevision);
  const [labels] = useState(() => new Map<string, string>());
  const form = useRef<HTMLFormElement>(null);
  const formId = useId();
  useEffect(() => {
    if (state.outcome !== "refused") return;
    const wrong = form.current?.querySelector<HTMLElement>("[aria-invalid=true]");
    (wrong ?? form.current?.querySelector<HTMLElement>("[role=alert]"))?.focus();
  }, [state]);
  const hiddenNames = onRefill ? [] : Object.keys(hidden);
  const keep = () => {
    if (form.current) keepTyping(place, typedIn(form.current, hiddenNames));
  };
  // What a caller keeps reaches the form with the next drawing of it.
  const keepSoon = () => setTimeout(keep);
  const keepAndSend = (event: FormEvent<HTMLFormElement>) => {
    keep();
    send(event);
  };
  return (
    <FormContext value={{ formId, state, labels, isPending, forget }}>
      <form
        ref={form}
        action={dispatch}
        onSubmit={keepAndSend}
        onInput={keepSoon}
        noValidate
        aria-label={label}
        className="kit"
      >
        <KeptTyping form={form} place={place} hidden={hiddenNames} onRefill={onRefill} />
        {Object.entries(hidden).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        {seen !== null && <input type="hidden" name={REVISION} value={seen} />}
        {state.outcome === "refused" && <Refusal formId={formId} labels={labels} problems={state.problems} />}
        {children}
        <div className="actions">
          {submit && (
            <button type="submit" className={isQuiet ? undefined : "main"} disabled={isPending}>
              {isPending ? "Saving…" : submit}
            </button>
          )}
          {beside}
          <span role="status" className="good-word">
            {state.outcome === "saved" && !isPending && "✓ Saved"}
          </span>
        </div>
      </form>
    </FormContext>
  );
}

/**
 * Sends a form by hand, since a form that React sends is emptied afterwards and one that cannot be sent is lost. Before scripts arrive the
 * browser sends it itself, and `posted` is the answer to that.
 */
function useSending(action: FormAction, place: string) {
  const [posted, dispatch] = useActionState(action, FRESH);
  const [answered, setAnswered] = useState<FormState | null>(null);
  const [isPending, startSending] = useTransition();
  const [keys] = useState(() => new SaveKeys());
  const state = answered ?? posted;
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const filled = new FormData(event.currentTarget, submitter);
    const content = JSON.stringify([...filled]);
    filled.set(SAVE_KEY, keys.keyOf(content));
    startSending(async () => {
      const answer = await answerOf(action, state, filled, place);
      keys.settle(content, answer !== null);
      if (answer?.outcome === "saved") forgetTyping(place);
      setAnswered(answer ?? unanswered(state));
    });
  };
  return { state, dispatch, isPending, send, forget: () => setAnswered(FRESH) };
}

/** Null when none came. */
async function answerOf(action: FormAction, before: FormState, form: FormData, place: string) {
  try {
    return await action(before, form);
  } catch (error) {
    // The page to open next comes as an error too: then the form was saved.
    if (isRedirectError(error)) forgetTyping(place);
    unstable_rethrow(error);
    return null;
  }
}

/** By what this browser knows the form again: its page, its name and the records that it is about. */
function usePlace({ label, submit, hidden = {} }: Props): string {
  const path = usePathname();
  const ids = Object.values(hidden).filter((id) => String(id).length < 40);
  return [path, label ?? submit, ...ids].join(" ");
}
