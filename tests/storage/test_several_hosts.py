"""Two hosts on one PostgreSQL: each store here is a process of its own, as far as the database
can tell. Who has to wait is asked of the server's own list of locks."""

import time
from collections.abc import Callable, Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from datetime import timedelta
from functools import partial
from itertools import count
from typing import TypeVar

import pytest
from sqlalchemy import text
from sqlalchemy.exc import OperationalError

from bot.conversation import Conversation
from bot.entries import Strips
from bot.messages import Incoming, Kind
from bot.participants import Invitation, Role
from bot.record import Event
from bot.storage.letters import End
from bot.storage.outbox import LEASE
from bot.storage.store import Store
from bot.storage.work import ChatSeen, Work
from bot.turns.turn import Turn
from scheduler.clock import real_now
from tests.conversation.echo import START, echo_turns, person, saying
from tests.postgres import Server

R = TypeVar("R")
MINUTES = timedelta(minutes=1)


class Hosts:
    """Two stores on one database, and turns that run beside the test's own."""

    def __init__(self, server: Server, url: str) -> None:
        self.server, self.url = server, url
        self.one, self.other = Store.open(url), Store.open(url)
        self._threads = ThreadPoolExecutor(max_workers=8)

    def beside(self, turn: Callable[[Work], R], store: Store | None = None) -> "Future[R]":
        """Begin a turn on the other host."""
        return self._threads.submit((store or self.other).attempt, turn)

    def waits(self, turn: "Future[R]") -> bool:
        """Whether it comes to stand before a lock; False once it has ended."""
        while not turn.done():
            if self.server.sql("SELECT 1 FROM pg_locks WHERE NOT granted"):
                return True
            time.sleep(0.005)
        return False

    def close(self) -> None:
        """End both."""
        self._threads.shutdown()
        self.one.close()
        self.other.close()


@pytest.fixture
def hosts(postgres_server: Server, postgres_url: str) -> Iterator[Hosts]:
    both = Hosts(postgres_server, postgres_url)
    yield both
    both.close()


def keep(id_: int) -> Turn:
    return Turn(participant=person(), events=(Event(id=id_, at=START, body=Strips(left=id_)),))


class TestUpdates:
    def test_one_that_both_take_is_handled_by_the_first(self, hosts: Hosts) -> None:
        with hosts.one.turn() as work:
            assert work.first_sight(7, START)
            again = hosts.beside(lambda work: work.first_sight(7, START))
            assert hosts.waits(again)
        assert again.result() is False

    def test_one_that_the_first_could_not_keep_is_the_others(self, hosts: Hosts) -> None:
        def fail(work: Work) -> None:
            assert work.first_sight(7, START)
            again.append(hosts.beside(lambda work: work.first_sight(7, START)))
            assert hosts.waits(again[0])
            raise ZeroDivisionError

        again: list[Future[bool]] = []
        with pytest.raises(ZeroDivisionError):
            hosts.one.attempt(fail)
        assert again[0].result() is True

    def test_a_stranger_s_second_message_waits_for_the_first_and_nobody_elses_does(
        self, hosts: Hosts
    ) -> None:
        def enrolled_as(work: Work) -> str | None:
            chat = work.chat("100")
            return None if chat is None else chat.participant

        with hosts.one.turn() as work:
            assert work.chat("100") is None
            second = hosts.beside(enrolled_as)
            assert hosts.waits(second)
            assert hosts.beside(lambda work: work.chat("101")).result(5) is None
            work.keep_chat(ChatSeen(id="100", participant="ann"), START)
        assert second.result() == "ann"

    def test_messages_of_one_chat_are_answered_in_order_whichever_host_they_reach(
        self, hosts: Hosts
    ) -> None:
        ids = count()
        both = [
            Conversation(store, echo_turns, real_now=lambda: START, new_id=lambda: f"p{next(ids)}")
            for store in (hosts.one, hosts.other)
        ]
        both[0].enrol(person(), START, chat="100")
        for number in range(1, 21):
            text = f"strips {number}"
            incoming = Incoming(update=number, chat="100", message=str(number), at=START, text=text)
            both[number % 2].hear(incoming, START)
        with hosts.one.turn() as work:
            texts = [letter.text for letter in work.outbox.pending()]
            ids_kept = [event.id for event in work.events("ann")]
        assert texts == [f"heard strips {number}" for number in range(1, 21)]
        assert ids_kept == sorted(set(ids_kept))


class TestPeople:
    def test_a_turn_has_its_person_to_itself(self, hosts: Hosts) -> None:
        def next_id(work: Work) -> int:
            opened = work.open("ann", START)
            assert opened is not None
            return len(opened.events) + 1

        with hosts.one.turn() as work:
            work.enrol(person(), START)
            work.enrol(person("ben"), START)
        with hosts.one.turn() as work:
            work.open("ann", START)
            second = hosts.beside(next_id)
            assert hosts.waits(second)
            assert hosts.beside(lambda work: work.open("ben", START)).result(5) is not None
            work.save(keep(1))
        assert second.result() == 2

    def test_turns_of_one_person_on_many_threads_of_two_hosts_lose_and_double_nothing(
        self, hosts: Hosts
    ) -> None:
        def add(work: Work) -> None:
            opened = work.open("ann", START)
            assert opened is not None
            work.save(keep(len(opened.events) + 1))

        with hosts.one.turn() as work:
            work.enrol(person(), START)
        turns = [hosts.beside(add, (hosts.one, hosts.other)[n % 2]) for n in range(60)]
        for turn in turns:
            turn.result()
        for store in (hosts.one, hosts.other):
            with store.turn() as work:
                assert [event.body for event in work.events("ann")] == [
                    Strips(left=number) for number in range(1, 61)
                ]

    def test_who_is_in_a_turn_is_not_handed_out_as_due(self, hosts: Hosts) -> None:
        with hosts.one.turn() as work:
            for number in range(3):
                work.enrol(person(f"p{number}"), START, START + number * MINUTES)
        late = START + timedelta(hours=1)
        with hosts.one.turn() as work:
            work.open("p1", START)
            assert hosts.beside(lambda work: work.due(late, 9)[0]).result(5) == ("p0", "p2")

    def test_a_code_that_two_chats_use_at_once_makes_one_participant(self, hosts: Hosts) -> None:
        invitation = Invitation(zone="America/Lima", role=Role.PARTICIPANT)
        with hosts.one.turn() as work:
            work.invite("ABCD-EFGH", invitation, START + timedelta(days=1))
        with hosts.one.turn() as work:
            assert work.invitation("ABCD-EFGH", START) == invitation
            second = hosts.beside(lambda work: work.invitation("ABCD-EFGH", START))
            assert hosts.waits(second)
            work.spend("ABCD-EFGH", START)
        assert second.result() is None

    def test_two_turns_that_wait_for_each_other_both_come_through(self, hosts: Hosts) -> None:
        """A participant's alert wants their educator; the educator looks at the participant."""
        with hosts.one.turn() as work:
            work.enrol(person(), START)
            work.enrol(person("ben"), START)

        met = {"ann": Future[bool](), "ben": Future[bool]()}

        def both(first: str, then: str) -> Callable[[Work], str]:
            def turn(work: Work) -> str:
                work.open(first, START)
                if not met[first].done():
                    met[first].set_result(True)
                    met[then].result(5)
                work.open(then, START)
                return first

            return turn

        turns = hosts.beside(both("ann", "ben")), hosts.beside(both("ben", "ann"), hosts.one)
        assert [turn.result(20) for turn in turns] == ["ann", "ben"]

    def test_what_the_bot_remembers_of_itself_may_be_told_by_all_at_once(
        self, hosts: Hosts
    ) -> None:
        turns = [
            hosts.beside(partial(Work.set_fact, name="alive", value=str(n)), store)
            for n in range(10)
            for store in (hosts.one, hosts.other)
        ]
        assert [turn.result(5) for turn in turns] == [None] * 20


class TestOutbox:
    def test_two_senders_never_have_the_same_message(self, hosts: Hosts) -> None:
        now = real_now()
        with hosts.one.turn() as work:
            work.outbox.queue([saying(f"chat:{n}", str(n), str(n), at=now) for n in range(40)], now)

        def take(work: Work) -> str | None:
            letter = work.outbox.claim(now, now)
            return None if letter is None else letter.text

        with hosts.one.turn() as work:
            assert take(work) == "0"
            assert hosts.beside(take).result(5) == "1"
        turns = [hosts.beside(take, (hosts.one, hosts.other)[n % 2]) for n in range(38)]
        assert sorted(int(str(turn.result(5))) for turn in turns) == list(range(2, 40))
        assert hosts.beside(take).result(5) is None

    @pytest.mark.parametrize("slow", [-2 * MINUTES, 2 * MINUTES], ids=["behind", "ahead"])
    def test_a_lease_lasts_as_long_however_the_clock_of_a_host_is_set(
        self, hosts: Hosts, slow: timedelta
    ) -> None:
        now = real_now()

        def take_back(work: Work) -> int:
            return work.outbox.recover(now - slow)

        with hosts.one.turn() as work:
            work.outbox.queue([saying("chat:1", "hi", "k", at=now - 5 * MINUTES)], now)
            letter = work.outbox.claim(now + slow, now + slow)
            assert letter is not None
        assert hosts.beside(take_back).result(5) == 0
        with hosts.one.turn() as work:
            lease, clock = work.connection.execute(
                text("SELECT lease_real, extract(epoch FROM clock_timestamp()) FROM outbox")
            ).one()
            left = timedelta(milliseconds=lease) - timedelta(seconds=float(clock))
            assert LEASE - timedelta(seconds=10) < left <= LEASE
            work.connection.execute(text("UPDATE outbox SET lease_real = lease_real - 121000"))
        assert hosts.beside(take_back).result(5) == 1

    def test_a_sender_that_was_away_too_long_leaves_the_message_to_the_next(
        self, hosts: Hosts
    ) -> None:
        now = real_now()
        chart = {"figures": 1}
        with hosts.one.turn() as work:
            work.keep_chat(ChatSeen(id="100", participant="ann"), now)
            digest = saying("ann", "week", "k", at=now, kind=Kind.DIGEST, picture=chart)
            work.outbox.queue([digest], now)
            old = work.outbox.claim(now, now)
            assert old is not None
        with hosts.other.turn() as work:
            work.outbox.recover(now, all_leases=True)
            new = work.outbox.claim(now, now + timedelta(seconds=1))
            assert new is not None
        with pytest.raises(LookupError), hosts.one.turn() as work:
            work.outbox.sending(old, now)
        with hosts.one.turn() as work:
            work.outbox.give_back(old, now, may_have_arrived=True)
            work.outbox.settle(old, End.FAILED, now)
            assert work.outbox.counts() == {"claimed": 1}
        with hosts.other.turn() as work:
            work.outbox.sending(new, now)
            work.outbox.settle(new, End.SENT, now, message="5")
            assert work.outbox.counts() == {"sent": 1}
        with hosts.one.turn() as work:
            work.outbox.give_back(new, now, may_have_arrived=True)
            assert work.outbox.counts() == {"sent": 1}


class TestTrouble:
    @pytest.fixture
    def talk(self, hosts: Hosts) -> Conversation:
        with hosts.one.turn() as work:
            work.enrol(person(), START)
            work.keep_chat(ChatSeen(id="100", participant="ann"), START)
        return Conversation(hosts.one, echo_turns, real_now=lambda: START, new_id=lambda: "x")

    def name(self, hosts: Hosts) -> str:
        return str(hosts.one.engine.url.database)

    def test_a_server_that_has_become_a_copy_for_reading_takes_no_message_and_loses_none(
        self, hosts: Hosts, talk: Conversation, caplog: pytest.LogCaptureFixture
    ) -> None:
        message = Incoming(update=1, chat="100", message="1", at=START, text="hello")
        name = self.name(hosts)
        hosts.server.sql(f"ALTER DATABASE {name} SET default_transaction_read_only = on")
        hosts.one.engine.dispose()
        with pytest.raises(Exception, match="read-only"):
            talk.hear(message, START)
        assert "update parked" not in caplog.text
        hosts.server.sql(f"ALTER DATABASE {name} RESET default_transaction_read_only")
        hosts.one.engine.dispose()
        assert not talk.hear(message, START).parked

    def test_connections_that_died_are_made_anew_without_a_turn_failing(
        self, hosts: Hosts, talk: Conversation
    ) -> None:
        for update in (1, 2):
            kill = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = "
            hosts.server.sql(f"{kill}'{self.name(hosts)}'")
            message = Incoming(
                update=update, chat="100", message=str(update), at=START, text="hello"
            )
            assert talk.hear(message, START).said == 1

    def test_one_that_dies_within_a_turn_leaves_nothing_and_the_message_comes_again(
        self, hosts: Hosts
    ) -> None:
        def die(work: Work) -> None:
            assert work.first_sight(1, START)
            pid = work.connection.execute(text("SELECT pg_backend_pid()")).scalar_one()
            hosts.server.sql(f"SELECT pg_terminate_backend({pid})")
            work.fact("alive")

        with pytest.raises(OperationalError):
            hosts.one.attempt(die)
        with hosts.one.turn() as work:
            assert work.first_sight(1, START)

    def test_rights_taken_away_are_the_operator_s_matter_and_lose_no_message(
        self, hosts: Hosts, talk: Conversation
    ) -> None:
        message = Incoming(update=1, chat="100", message="1", at=START, text="hello")
        name = self.name(hosts)
        hosts.server.sql("ALTER TABLE entry OWNER TO postgres", name)
        with pytest.raises(Exception, match="permission denied"):
            talk.hear(message, START)
        hosts.server.sql("ALTER TABLE entry OWNER TO owner", name)
        assert not talk.hear(message, START).parked
