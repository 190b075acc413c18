// Asks this machine, and tells it things. Every address is of this very page's origin.

export class Refused extends Error {
  constructor(status) {
    super(`refused with ${status}`);
    this.status = status;
  }
}

export async function ask(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Refused(answer.status);
  return answer.json();
}

export async function tell(address, body) {
  const answer = await fetch(address, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });
  if (!answer.ok) throw new Refused(answer.status);
  const text = await answer.text();
  return text ? JSON.parse(text) : {};
}

const trouble = document.getElementById("trouble");

export function complain(words) {
  if (trouble.textContent !== words) trouble.textContent = words;
  trouble.hidden = !words;
}

export const NOBODY_THERE = "The bot on this machine does not answer. Is it still running?";
