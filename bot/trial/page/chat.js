// The chat of one seat: shows what the server holds, and says what the visitor writes.
import { NOBODY_THERE, Refused, ask, complain, tell } from "./asking.js";
import { showClock } from "./clock.js";
import { dayLine, drawn, markPressed } from "./entry.js";

const AGAIN = 2000; // milliseconds before a server that is away is asked again
const seat = location.pathname.slice(1);
const name = seat === "educator" ? "Educator" : "Participant";
const log = document.getElementById("log");
const entries = document.getElementById("entries");
const text = document.getElementById("text");
const photo = document.getElementById("photo");
const about = document.getElementById("about");
const shown = new Map(); // message id -> its JSON as last drawn, and its item
const read = new Map(); // seat -> how many of the bot's messages were there when last looked at
let lastDay = "";
let atEnd = true; // the reader sees the newest: it stays in sight
let doing = null; // { answers: message } or { changes: message }: what the next words are about
let visit = null;

// ── What is shown ───────────────────────────────────────────────────────────

function show(state) {
  if (visit !== null && visit !== state.visit) location.reload();
  visit = state.visit;
  showClock(state.clock, state.speeds);
  document.getElementById("hint").hidden = state.messages.length > 0;
  document.getElementById("hint").dataset.code = state.code;
  let last = null;
  for (const message of state.messages) last = place(message) || last;
  if (last && (atEnd || last.classList.contains("mine"))) last.scrollIntoView({ block: "nearest" });
  if (log.getAttribute("aria-live") === "off") {
    log.scrollTop = log.scrollHeight;
    log.setAttribute("aria-live", "polite"); // only what comes from now on is read out
  }
  count(state.heard);
}

// Draws a message that is new or has changed, and gives its item if it is new.
function place(message) {
  const { pressed, ...rest } = message;
  const asJson = JSON.stringify(rest);
  const old = shown.get(message.id);
  if (old) markPressed(old.item, pressed);
  if (old && old.asJson === asJson) return null;
  const item = drawn(message, { answer, change, press });
  markPressed(item, pressed);
  shown.set(message.id, { asJson, item });
  if (old) {
    const kept = focused(old.item);
    old.item.replaceWith(item);
    if (kept >= 0) item.querySelectorAll("button, a")[kept]?.focus();
    return null;
  }
  if (message.day !== lastDay) entries.append(dayLine(message.day));
  lastDay = message.day;
  entries.append(item);
  return item;
}

log.addEventListener("scroll", () => {
  atEnd = log.scrollHeight - log.scrollTop - log.clientHeight < 40;
});
new ResizeObserver(() => {
  if (atEnd) log.scrollTop = log.scrollHeight; // a telephone's keyboard takes room from the log
}).observe(log);

function focused(item) {
  return [...item.querySelectorAll("button, a")].indexOf(document.activeElement);
}

// Unread messages stand in the tab's title; those of the other seat beside its link.
function count(heard) {
  for (const [one, messages] of Object.entries(heard)) {
    if (!read.has(one) || (one === seat && !document.hidden)) read.set(one, messages);
  }
  const unread = (one) => heard[one] - read.get(one);
  document.title = `${unread(seat) ? `(${unread(seat)}) ` : ""}${name}: Afterplate on this machine`;
  for (const link of document.querySelectorAll("nav a")) {
    const one = link.getAttribute("href");
    if (!(one in heard)) continue;
    const words = one === "educator" ? "Educator" : "Participant";
    const fresh = one !== seat && unread(one);
    const full = fresh ? `${words} (${fresh} new)` : words;
    if (link.textContent !== full) link.textContent = full;
  }
}

document.addEventListener("visibilitychange", () => {
  if (!document.hidden) document.title = `${name}: Afterplate on this machine`;
});

// ── What the visitor does ───────────────────────────────────────────────────

async function attempt(address, body) {
  complain("");
  try {
    await tell(address, { seat, ...body });
    return true;
  } catch (error) {
    complain(error instanceof Refused ? "That could not be sent." : NOBODY_THERE);
    return false;
  }
}

async function press(message, label) {
  await attempt("press", { message: message.id, label });
}

function turnTo(what, words) {
  doing = what;
  document.getElementById("about-what").textContent = words;
  about.hidden = false;
  text.focus();
}

function answer(message) {
  const words = message.text || "a picture";
  turnTo({ answers: message }, `Answering: ${words.slice(0, 48)}${words.length > 48 ? "…" : ""}`);
}

function change(message) {
  turnTo({ changes: message }, `Changing what you wrote at ${message.at}`);
  text.value = message.text;
  fit();
}

function letGo() {
  if (doing && doing.changes) text.value = "";
  doing = null;
  about.hidden = true;
  fit();
}

async function send() {
  const words = text.value.trim();
  const isPhoto = photo.checked;
  if (!words && !(isPhoto && !doing?.changes)) return;
  const what = doing;
  const sent = what?.changes
    ? await attempt("change", { message: what.changes.id, text: words })
    : await attempt("say", { text: words, photo: isPhoto, answers: what?.answers?.id ?? null });
  if (!sent) return;
  text.value = "";
  photo.checked = false;
  letGo();
}

function fit() {
  text.rows = Math.min(4, Math.max(1, text.value.split("\n").length));
}

document.getElementById("write").addEventListener("submit", async (event) => {
  event.preventDefault();
  await send();
  text.focus();
});
document.getElementById("let-go").addEventListener("click", () => {
  letGo();
  text.focus();
});
document.getElementById("join").addEventListener("click", async () => {
  await attempt("say", { text: `/start ${document.getElementById("hint").dataset.code}` });
  text.focus();
});
text.addEventListener("input", fit);
text.addEventListener("keydown", (event) => {
  if (event.key === "Escape") letGo();
  if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
  event.preventDefault();
  send();
});

// ── Listening ───────────────────────────────────────────────────────────────

function mark() {
  document.getElementById("talk-title").textContent = `${name}'s conversation`;
  document.title = `${name}: Afterplate on this machine`;
  document.querySelector(`nav a[href="${seat}"]`).setAttribute("aria-current", "page");
}

async function listen() {
  let seen = -1;
  for (;;) {
    try {
      const state = await ask(`state?seat=${seat}&seen=${seen}`);
      seen = state.revision;
      show(state);
      if (document.getElementById("trouble").textContent === NOBODY_THERE) complain("");
    } catch (error) {
      if (error instanceof Refused && error.status === 409) return location.assign("/");
      complain(NOBODY_THERE);
      seen = -1;
      await new Promise((wake) => setTimeout(wake, AGAIN));
    }
  }
}

mark();
listen();
text.focus();
