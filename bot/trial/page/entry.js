// One entry of the conversation. What anybody wrote is set as text, never as HTML.

export function part(name, className, words) {
  const made = document.createElement(name);
  if (className) made.className = className;
  if (words !== undefined) made.textContent = words;
  return made;
}

// The same in the language that it is in, which may be another than the page's.
function inLanguage(made, language) {
  if (language) made.lang = language;
  return made;
}

function button(words, className, onClick) {
  const made = part("button", className, words);
  made.type = "button";
  made.addEventListener("click", onClick);
  return made;
}

function shortened(words) {
  return words.length > 60 ? `${words.slice(0, 59)}…` : words;
}

function head(message, deeds) {
  const line = part("p", "head");
  line.append(part("strong", "", message.mine ? "You" : "Afterplate"));
  const time = part("time", "", message.at);
  time.dateTime = message.when;
  line.append(time);
  if (message.edited) line.append(part("span", "", "changed"));
  const about = message.text ? `: ${shortened(message.text)}` : "";
  const [words, deed] = message.mine ? ["Change", deeds.change] : ["Answer this", deeds.answer];
  if (!message.mine || message.text) {
    const made = button(words, "quiet", () => deed(message));
    made.setAttribute("aria-label", words + about);
    line.append(made);
  }
  return line;
}

function picture({ address, words }) {
  const made = part("img");
  made.alt = words;
  made.src = address;
  made.width = 800; // keeps the place; the style makes it fit
  made.height = 600;
  return made;
}

function file({ address, name }) {
  const line = part("p", "file");
  const link = part("a", "", `Save ${name}`);
  link.href = address;
  link.download = name;
  line.append(link);
  return line;
}

function choices(message, deeds) {
  const group = part("div", "choices");
  group.setAttribute("role", "group");
  group.setAttribute("aria-label", "Buttons of the bot");
  for (const label of message.buttons) {
    group.append(inLanguage(button(label, "", () => deeds.press(message, label)), message.lang));
  }
  return group;
}

export function drawn(message, deeds) {
  const item = part("li", message.mine ? "mine" : "bots");
  item.id = `entry-${message.id}`;
  item.dataset.language = message.lang || "";
  item.append(head(message, deeds));
  if (message.answers) {
    const { text, lang, id } = message.answers;
    const quote = part("a", "quote", text ? "to: " : "to: a picture");
    if (text) quote.append(inLanguage(part("span", "", text), lang));
    quote.href = `#entry-${id}`;
    item.append(quote);
  }
  if (message.note) item.append(part("p", "note", message.note));
  if (message.picture) {
    item.append(inLanguage(picture(message.picture), message.text && message.lang));
  }
  if (message.text) item.append(inLanguage(part("p", "said", message.text), message.lang));
  if (message.file) item.append(file(message.file));
  if (message.buttons.length) item.append(choices(message, deeds));
  return item;
}

// Told under its buttons which one was pressed last, without the rest being said again.
export function markPressed(item, label) {
  if (!label || item.dataset.pressed === label) return;
  item.dataset.pressed = label;
  item.querySelector(".pressed")?.remove();
  const line = part("p", "note pressed", "You pressed: ");
  line.append(inLanguage(part("span", "", label), item.dataset.language));
  item.append(line);
}

export function dayLine(day) {
  const item = part("li", "day");
  item.append(part("h3", "", day));
  return item;
}
