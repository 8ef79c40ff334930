import { html, render } from "lit";
import { adoptTrial, type DecisionCell, freshId, type Trial, textAt } from "../../cells/index.ts";
import type { Desk } from "../desk.ts";
import { goTo } from "../go-to.ts";
import { tell } from "../notice.ts";
import { settingsText } from "./settings-text.ts";
import { words } from "./words.ts";
import "./comparison.css";

/**
 * Asks why a trial is taken over as the baseline. What it sets is then the notebook's own, with a decision that says why;
 * one step takes all of it back.
 */
export function openAdoptDialog(desk: Desk, index: number): void {
  const { session } = desk;
  const trial = session.own.trials[index];
  if (!trial || session.readOnly) return;
  const dialog = document.createElement("dialog");
  dialog.className = "adopt";
  dialog.ariaLabel = words.adoptHeading(trial.name);
  const options = optionsBeside(desk, trial);
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const decision = decisionOf(new FormData(event.target as HTMLFormElement), options.length);
    dialog.close();
    adopt(desk, index, trial, decision);
  };
  render(
    html`<h2>${words.adoptHeading(trial.name)}</h2>
      <p>${words.adoptText}</p>
      <form @submit=${submit}>
        ${field("question", words.question, words.which(Object.keys(trial.set)))}
        ${field("chosen", words.chosen, words.option(trial.name, settingsText(trial.set)))}
        <label><span>${words.why}</span><textarea name="why" rows="2" required placeholder=${words.whyHint}
          @invalid=${(event: Event) => (event.target as HTMLTextAreaElement).setCustomValidity(words.whyMissing)}
          @input=${(event: Event) => (event.target as HTMLTextAreaElement).setCustomValidity("")}></textarea></label>
        ${options.map((option, place) => html`<div class="option">${field(`option${place}`, words.insteadOf, option)}${field(`whyNot${place}`, words.whyNot, "")}</div>`)}
        ${field("revisit", words.revisit, "", words.revisitHint)}
        <div class="actions">
          <button>${words.takeOver}</button>
          <button type="button" @click=${() => dialog.close()}>${words.leaveAsIs}</button>
        </div>
      </form>`,
    dialog,
  );
  document.body.append(dialog);
  dialog.addEventListener("close", () => dialog.remove());
  dialog.showModal();
  dialog.querySelector<HTMLElement>("[name=why]")?.focus();
}

const field = (name: string, label: string, value: string, hint = "") =>
  html`<label><span>${label}</span><input type="text" name=${name} .value=${value} placeholder=${hint} /></label>`;

/** What else was at hand: the baseline as it was, and the other trials. */
function optionsBeside({ session }: Desk, trial: Trial): string[] {
  const { own } = session;
  const before = Object.keys(trial.set).flatMap((target): [string, string][] => {
    const text = textAt(own, target);
    return text === null ? [] : [[target, text]];
  });
  const others = own.trials.filter((each) => each !== trial);
  return [
    words.asItWas(settingsText(Object.fromEntries(before))),
    ...others.map(({ name, set }) => words.option(name, settingsText(set))),
  ];
}

type Decision = Omit<DecisionCell, "id" | "kind">;

/** An option that was emptied was none. */
function decisionOf(form: FormData, count: number): Decision {
  const text = (name: string): string => String(form.get(name) ?? "").trim();
  const alternatives = Array.from({ length: count }, (_, place) => ({
    option: text(`option${place}`),
    why_not: text(`whyNot${place}`),
  })).filter(({ option }) => option !== "");
  const revisit = text("revisit");
  return {
    question: text("question"),
    chosen: text("chosen"),
    why: text("why"),
    ...(alternatives.length > 0 && { alternatives }),
    ...(revisit !== "" && { revisit }),
  };
}

function adopt({ session, baseline }: Desk, index: number, trial: Trial, decision: Decision): void {
  // While the dialog stood nothing else could be edited here, but another tab may have taken over.
  if (session.own.trials[index] !== trial) return;
  const id = freshId(session.own);
  session.editOwn((notebook) => adoptTrial(notebook, index, { id, kind: "decision", ...decision }), null);
  void baseline.renew();
  const step = session.steps.undo;
  const act = (): void => {
    if (session.steps.undo === step) session.undo();
  };
  tell(words.adopted(trial.name), { label: words.takeBack, act });
  goTo(window, id);
}
