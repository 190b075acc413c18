// The bot's clock: counts on between two answers of the server, and is set by the visitor.
import { Refused, tell } from "./asking.js";

const TICK = 500; // milliseconds between two looks at the clock
const now = document.getElementById("now");
const speeds = document.getElementById("speeds");
const moved = document.getElementById("moved");
const format = new Intl.DateTimeFormat("en-GB", {
  weekday: "long", day: "numeric", month: "long", hour: "2-digit", minute: "2-digit",
  timeZone: "UTC", // what the server tells is the wall clock already
});

let told = null; // what the server said last, and when that was here
let moving = false;

function wall() {
  const passed = performance.now() - told.heard;
  return new Date(told.wall + passed * told.speed);
}

function spelled(date) {
  const part = Object.fromEntries(format.formatToParts(date).map((one) => [one.type, one.value]));
  return `${part.weekday} ${part.day} ${part.month}, ${part.hour}:${part.minute}`;
}

function tick() {
  if (!told || moving) return;
  const words = spelled(wall());
  if (now.textContent !== words) now.textContent = words;
}

function label(speed) {
  if (speed === 0) return ["Pause", "the clock stands still"];
  if (speed === 1) return ["1×", "as fast as the real one"];
  return [`${speed}×`, `${speed} times as fast as the real one`];
}

function choice(speed) {
  const [short, long] = label(speed);
  const made = document.createElement("label");
  const input = document.createElement("input");
  input.type = "radio";
  input.name = "speed";
  input.value = speed;
  input.setAttribute("aria-label", `${short}: ${long}`);
  input.addEventListener("change", () => tell("clock", { move: "run", speed }).catch(fail));
  const face = document.createElement("span");
  face.textContent = short;
  face.title = long;
  made.append(input, face);
  return made;
}

export function showClock(clock, all) {
  told = { wall: Date.parse(`${clock.wall}Z`), speed: clock.speed, heard: performance.now() };
  if (!speeds.querySelector("input")) speeds.append(...all.map(choice));
  for (const input of speeds.querySelectorAll("input")) {
    input.checked = Number(input.value) === clock.speed;
  }
  tick();
}

// Where the clock itself shows it, it is said for those who listen only.
function say(words, isShown) {
  moved.classList.toggle("unseen", isShown);
  moved.textContent = words;
}

function fail(error) {
  const busy = error instanceof Refused && error.status === 503;
  say(busy ? "The bot is still at work. Try again." : "That did not work.", false);
}

async function move(how) {
  if (moving) return;
  moving = true;
  say("Going on …", true);
  try {
    const answer = await tell("clock", { move: how });
    moving = false;
    tick();
    if (answer.moved) say(`It is ${now.textContent}.`, true);
    else say("Nothing is to come. Write something first.", false);
  } catch (error) {
    fail(error);
  } finally {
    moving = false;
  }
}

for (const how of ["next", "hour"]) {
  document.getElementById(how).addEventListener("click", () => move(how));
}
setInterval(tick, TICK);
