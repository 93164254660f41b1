using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>"Saturday open": the usual hours on a day of the week that has none.</summary>
internal static class OpenDays
{
    private const int MostDays = 2;
    private const int MostStations = 3;

    /// <summary>The weekend first: it is where most people would look.</summary>
    private static readonly IsoDayOfWeek[] Days =
    [
        IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday,
        IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday,
    ];

    public static IEnumerable<WhatIfIdea> Of(EpisodeChain chain) =>
    [
        .. chain.People.Take(MostStations).SelectMany(person => Ideas(
            person.Hours ?? Defaults.Evenings,
            person.Name == Defaults.Maker.Name ? "you are free" : $"{person.Name} is free",
            hours => new PersonChange(person.Id, person with { Hours = hours }))),
        .. chain.Machines.Take(MostStations).SelectMany(machine => Ideas(
            machine.Hours, $"“{machine.Name}” is open", hours => new MachineChange(machine.Id, machine with { Hours = hours }))),
        .. chain.Places.Take(MostStations).SelectMany(place => Ideas(
            place.Hours, $"“{place.Name}” is open", hours => new PlaceChange(place.Id, place with { Hours = hours }))),
    ];

    private static IEnumerable<WhatIfIdea> Ideas(OpenHours? hours, string whoIsFree, Func<OpenHours, Change> change)
    {
        if (hours?.Weekly.MaxBy(Length) is not { } usual)
        {
            return [];
        }

        var open = hours.Weekly.SelectMany(weekly => weekly.Days).ToHashSet();
        return Days.Where(day => !open.Contains(day)).Take(MostDays).Select(day => new WhatIfIdea(
            WhatIfKind.OpenDay,
            $"{whoIsFree} on {day}s too, {Words.Time(usual.From)} to {Words.Time(usual.To)}",
            change(hours with { Weekly = [.. hours.Weekly, usual with { Days = [day] }] })));
    }

    private static long Length(WeeklyHours hours)
    {
        var ticks = (hours.To - hours.From).ToDuration().BclCompatibleTicks;
        return ticks > 0 ? ticks : ticks + Duration.FromDays(1).BclCompatibleTicks;
    }
}
