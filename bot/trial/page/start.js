// The start page: one choice, then the participant's chat.
import { NOBODY_THERE, ask, complain, tell } from "./asking.js";

const LOOK_EVERY = 250; // milliseconds between two looks at how far the beginning is played
const progress = document.getElementById("progress");
const buttons = document.querySelectorAll(".choice button");
let opening = false;

function showProgress({ done, of }) {
  const share = Math.round((done / of) * 4) * 25; // in quarters: a screen reader says each
  const words = of > 1 ? `The week is being played: ${share} %.` : "The trial begins.";
  if (progress.textContent !== words) progress.textContent = words;
}

async function watch() {
  while (opening) {
    const visit = await ask("visit").catch(() => null);
    if (opening && visit && visit.opening) showProgress(visit.opening);
    await new Promise((wake) => setTimeout(wake, LOOK_EVERY));
  }
}

async function begin(beginning) {
  if (opening) return;
  opening = true;
  complain("");
  for (const button of buttons) button.setAttribute("aria-disabled", "true");
  watch();
  try {
    await tell("open", { beginning });
    location.assign("participant");
  } catch (error) {
    complain(error.status === 409 ? "A trial is being opened already." : NOBODY_THERE);
  } finally {
    opening = false;
    progress.textContent = "";
    for (const button of buttons) button.removeAttribute("aria-disabled");
  }
}

for (const button of buttons) button.addEventListener("click", () => begin(button.value));

async function look() {
  try {
    const visit = await ask("visit");
    document.getElementById("open").hidden = !visit.open;
  } catch {
    complain(NOBODY_THERE);
  }
}

window.addEventListener("pageshow", look);
