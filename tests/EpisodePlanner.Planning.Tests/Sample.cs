using NodaTime;

namespace EpisodePlanner.Planning.Tests;

/// <summary>A small sound workshop with at least one of everything, and ways to edit one thing of it.</summary>
internal static class Sample
{
    public static Workshop Sound { get; } = new()
    {
        Format = Workshop.CurrentFormat,
        Name = "The long bench",
        Zone = "Europe/Dublin",
        Settings = new Settings
        {
            Maker = "Anna",
            Desk = Id("desk"),
            Tail = [new TailPart { Kind = TailKind.EditPass, Hours = 8 }],
        },
        People = [new Person { Id = Id("anna"), Name = "Anna", Hours = SampleStations.Evenings }],
        Machines = SampleStations.Machines,
        Places = SampleStations.Places,
        Series = SampleStory.Series,
        Tasks = SampleTasks.All,
        Episodes = SampleStory.Episodes,
        SlotRules = [new SlotRule
        {
            Id = Id("fridays"),
            From = Day(1, 2),
            At = new LocalTime(18, 0),
            Rule = "FREQ=WEEKLY;BYDAY=FR",
            Series = [Id("buggy")],
        }],
        Uploads = [new Upload { Id = Id("up-1"), Series = Id("buggy"), Date = Day(1, 9), Episode = Id("ep-1") }],
        Log =
        [
            new LogEntry
            {
                Id = Id("log-1"),
                At = Moment(5, 18),
                Task = Id("cut-tube"),
                Stage = Id("1"),
                Outcome = LogOutcome.Begun,
            },
            new LogEntry
            {
                Id = Id("log-2"),
                At = Moment(5, 20),
                Task = Id("cut-tube"),
                Stage = Id("1"),
                Minutes = 120,
                Outcome = LogOutcome.Done,
                Station = Id("anna"),
            },
            new LogEntry
            {
                Id = Id("log-3"),
                At = Moment(6, 18),
                Episode = Id("ep-2"),
                Part = TailKind.EditPass,
                Outcome = LogOutcome.Begun,
            },
        ],
        ToldDates = [new ToldDate
        {
            Id = Id("told-1"),
            Episode = Id("ep-2"),
            Date = Day(2, 6),
            ToldOn = Day(1, 9),
            To = "supporters",
            Odds = 0.8m,
        }],
        TimedLines = [new TimedLine
        {
            Id = Id("line-1"),
            Text = "Ten percent off",
            From = Day(1, 1),
            Until = Day(3, 1),
            DueBy = Day(2, 20),
            Episode = Id("ep-2"),
        }],
        Bookings = [new Booking
        {
            Id = Id("book-1"),
            Place = Id("yard"),
            From = Day(3, 7).At(new LocalTime(9, 0)),
            To = Day(3, 7).At(new LocalTime(17, 0)),
        }],
        Accepted = new AcceptedPlan
        {
            At = Moment(6, 21),
            Starts = [new AcceptedStart { Task = Id("weld-frame"), Stage = Id("1"), Start = Moment(7, 18) }],
        },
    };

    public static Id Id(string text) => new(text);

    /// <summary>A day of 2026.</summary>
    public static LocalDate Day(int month, int day) => new(2026, month, day);

    /// <summary>An hour of a day in January 2026, UTC.</summary>
    public static Instant Moment(int day, int hour) => Instant.FromUtc(2026, 1, day, hour, 0);

    public static Workshop WithPerson(string id, Func<Person, Person> edit) =>
        Sound with { People = Edit(Sound.People, id, edit) };

    public static Workshop WithMachine(string id, Func<Machine, Machine> edit) =>
        Sound with { Machines = Edit(Sound.Machines, id, edit) };

    public static Workshop WithPlace(string id, Func<Place, Place> edit) =>
        Sound with { Places = Edit(Sound.Places, id, edit) };

    public static Workshop WithSeries(string id, Func<Series, Series> edit) =>
        Sound with { Series = Edit(Sound.Series, id, edit) };

    public static Workshop WithTask(string id, Func<WorkTask, WorkTask> edit) =>
        Sound with { Tasks = Edit(Sound.Tasks, id, edit) };

    /// <summary>The workshop with the first stage of a task edited.</summary>
    public static Workshop WithStage(string task, Func<Stage, Stage> edit) =>
        WithTask(task, t => t with { Stages = [edit(t.Stages[0]), .. t.Stages.Skip(1)] });

    /// <summary>The workshop with the first link of a task edited.</summary>
    public static Workshop WithLink(string task, Func<TaskLink, TaskLink> edit) =>
        WithTask(task, t => t with { Links = [edit(t.Links[0]), .. t.Links.Skip(1)] });

    public static Workshop WithEpisode(string id, Func<Episode, Episode> edit) =>
        Sound with { Episodes = Edit(Sound.Episodes, id, edit) };

    public static Workshop WithSlotRule(string id, Func<SlotRule, SlotRule> edit) =>
        Sound with { SlotRules = Edit(Sound.SlotRules, id, edit) };

    public static Workshop WithUpload(string id, Func<Upload, Upload> edit) =>
        Sound with { Uploads = Edit(Sound.Uploads, id, edit) };

    public static Workshop WithLog(params LogEntry[] entries) =>
        Sound with { Log = [.. Sound.Log, .. entries] };

    public static Workshop WithToldDate(string id, Func<ToldDate, ToldDate> edit) =>
        Sound with { ToldDates = Edit(Sound.ToldDates, id, edit) };

    public static Workshop WithTimedLine(string id, Func<TimedLine, TimedLine> edit) =>
        Sound with { TimedLines = Edit(Sound.TimedLines, id, edit) };

    public static Workshop WithBooking(string id, Func<Booking, Booking> edit) =>
        Sound with { Bookings = Edit(Sound.Bookings, id, edit) };

    private static Keyed<T> Edit<T>(Keyed<T> things, string id, Func<T, T> edit)
        where T : class, IThing => things.With(edit(things.Find(Id(id))!));
}
