// The chat page: asks this machine what there is to show, and says what its reader writes.
"use strict";

const talk = document.getElementById("talk");
const text = document.getElementById("text");
const hint = document.getElementById("hint");
const trouble = document.getElementById("trouble");
const shown = new Map(); // message number -> its JSON as last drawn

function part(name, className, words) {
  const made = document.createElement(name);
  if (className) made.className = className;
  if (words !== undefined) made.textContent = words;
  return made;
}

function drawn(message) {
  const item = part("li", message.mine ? "mine" : "");
  const edited = message.edited ? ", edited" : "";
  item.append(part("p", "who", `${message.mine ? "You" : "Afterplate"}, ${message.at}${edited}`));
  if (message.picture) {
    const picture = part("img");
    picture.src = message.picture;
    picture.alt = "A chart of the week. The words with it say all that it shows.";
    item.append(picture);
  }
  if (message.note) item.append(part("p", "who", message.note));
  if (message.text) item.append(part("p", "said", message.text));
  if (message.file) {
    const link = part("a", "", message.file.name);
    link.href = message.file.address;
    link.download = message.file.name;
    item.append(link);
  }
  if (message.buttons.length) {
    const choices = part("div", "choices");
    for (const label of message.buttons) {
      const button = part("button", "", label);
      button.type = "button";
      button.addEventListener("click", () => say("press", { message: message.id, label }));
      choices.append(button);
    }
    item.append(choices);
  }
  return item;
}

function show(state) {
  document.getElementById("clock").textContent = state.now;
  document.getElementById("speed").textContent =
    state.speed === 1 ? "" : `(${state.speed} times as fast as the real one)`;
  hint.hidden = state.messages.length > 0;
  for (const message of state.messages) {
    const asJson = JSON.stringify(message);
    const old = shown.get(message.id);
    if (old && old.asJson === asJson) continue;
    const item = drawn(message);
    if (old) old.item.replaceWith(item);
    else talk.append(item);
    shown.set(message.id, { asJson, item });
    item.scrollIntoView({ block: "nearest" });
  }
}

async function say(what, body) {
  trouble.hidden = true;
  try {
    const answer = await fetch(what, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
    });
    if (!answer.ok) throw new Error(answer.statusText);
    return true;
  } catch (error) {
    complain();
    return false;
  }
}

function complain() {
  trouble.textContent = "The bot on this machine does not answer. Is `try` still running?";
  trouble.hidden = false;
}

document.getElementById("write").addEventListener("submit", async (event) => {
  event.preventDefault();
  const words = text.value.trim();
  const photo = event.submitter !== null && event.submitter.value === "photo";
  if (!words && !photo) return;
  text.value = "";
  if (!(await say("say", { text: words, photo }))) text.value = words;
  text.focus();
});

document.getElementById("begin").addEventListener("click", async () => {
  await say("begin", {});
  text.focus();
});

async function listen() {
  let seen = -1;
  for (;;) {
    try {
      const answer = await fetch(`state?seen=${seen}`);
      if (!answer.ok) throw new Error(answer.statusText);
      const state = await answer.json();
      seen = state.revision;
      trouble.hidden = true;
      show(state);
    } catch (error) {
      complain();
      await new Promise((wake) => setTimeout(wake, 2000));
    }
  }
}

listen();
