namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// A small workshop file whose parts a test fills in as JSON: one person on weekday evenings, a slot every Friday,
/// planning values as typed, tails of no length. Monday 8 March 2027 is a fine day to plan on.
/// </summary>
internal sealed record Shop
{
    public const string Monday = "2027-03-08T08:00";

    public string Settings { get; init; } = Trial.Typed(0);

    public string People { get; init; } =
        $$"""{ "id": "ann", "name": "Ann", "hours": { "weekly": [{ "days": {{Trial.Weekdays}}, "from": "18:00", "to": "22:00" }] } }""";

    public string Machines { get; init; } = "";

    public string Places { get; init; } = "";

    public string Series { get; init; } = """{ "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }] }""";

    public string Tasks { get; init; } = "";

    public string Episodes { get; init; } = "";

    public string Slots { get; init; } = """{ "id": "fridays", "from": "2027-01-01", "at": "18:00", "rule": "FREQ=WEEKLY;BYDAY=FR" }""";

    public string Uploads { get; init; } = """{ "series": "raft", "date": "2027-03-05" }""";

    public string Log { get; init; } = "";

    /// <summary>Further members of the workshop, with a comma before each.</summary>
    public string More { get; init; } = "";

    public Plan Plan(string now = Monday) => Trial.Plan(File, now);

    /// <summary>Attended work of the raft, towards its one milestone.</summary>
    public static string Work(string id, int hours, string more = "") =>
        $$"""{ "id": "{{id}}", "name": "{{id}}", "milestone": "floats", "stages": [{ "kind": "attended", "hours": {{hours}} }]{{more}} }""";

    public string File => $$"""
        {
          "format": 1, "name": "Shop", "zone": "Etc/UTC", "settings": {{Settings}},
          "people": [{{People}}], "machines": [{{Machines}}], "places": [{{Places}}],
          "series": [{{Series}}], "tasks": [{{Tasks}}], "episodes": [{{Episodes}}],
          "slotRules": [{{Slots}}], "uploads": [{{Uploads}}], "log": [{{Log}}]{{More}}
        }
        """;
}
