"""The bot's clock as a visitor sets it: it runs at a speed, stands, or is moved on."""

from datetime import datetime, timedelta

from bot.trial.trial import StoryClock
from scheduler.clock import Rate, real_now

STANDING = 0.0


class VisitorsClock(StoryClock):
    """Stands at `start` until it is told to run. Messages are dated in its time."""

    def __init__(self, start: datetime) -> None:
        super().__init__(start)
        self._rate = Rate(real=real_now(), bot=super().now(), speed=STANDING)

    @property
    def speed(self) -> float:
        """How many of its seconds pass in a real one; 0 while it stands."""
        return self._rate.speed

    def run(self, speed: float) -> None:
        """Run at this speed from here on (0: stand)."""
        self._rate = self._rate.at_speed(speed, real_now())

    def step_to(self, instant: datetime) -> None:
        """Go on from this instant; raises ValueError if that would turn the clock back."""
        real = real_now()
        if instant < self._rate.bot_time(real):
            raise ValueError("a clock is never stepped back")
        self._rate = Rate(real=real, bot=instant, speed=self.speed)

    def now(self) -> datetime:
        """The bot's time."""
        return self._rate.bot_time(real_now())

    def real_time(self, bot: datetime) -> datetime:
        """When it will be `bot`; while the clock stands, far away unless it is due already."""
        if self.speed:
            return self._rate.real_time(bot)
        now = real_now()
        return now if bot <= self.now() else now + timedelta(days=1)
