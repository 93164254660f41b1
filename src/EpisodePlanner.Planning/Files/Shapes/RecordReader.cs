using System.Text.Json;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Reads one object: every member known, present once, and each that must be there present.</summary>
internal sealed class RecordReader(MemberShape[] members, Dictionary<string, int> byName, Reading reading)
{
    private readonly JsonElement?[] found = new JsonElement?[members.Length];

    /// <summary>Fills a new record from an object.</summary>
    public object Read(JsonElement element, object thing)
    {
        foreach (var property in element.EnumerateObject())
        {
            Find(property);
        }

        for (var i = 0; i < members.Length; i++)
        {
            ReadMember(thing, members[i], found[i]);
        }

        return thing;
    }

    private void Find(JsonProperty property)
    {
        if (!Unicode.TryGet(property, out var name))
        {
            reading.Complain("?", "The name of this member is not proper Unicode text.");
        }
        else if (!byName.TryGetValue(name, out var index))
        {
            reading.Complain(name, $"There is no member {Say.Quote(name)} here; {(reading.IsFull ? "" : Hint(name))}");
        }
        else if (found[index] is not null)
        {
            reading.Refuse(name, $"The member '{name}' is written twice; keep one of them.");
        }
        else
        {
            found[index] = property.Value;
        }
    }

    private string Hint(string name) => new Nearest().To(name, byName.Keys.Order(StringComparer.Ordinal)) is { } near
        ? $"did you mean '{near}'?"
        : $"here can stand: {Say.Row(byName.Keys)}.";

    private void ReadMember(object thing, MemberShape member, JsonElement? element)
    {
        if (element is null)
        {
            ReadAbsent(thing, member);
            return;
        }

        reading.Enter(member.Name);
        var before = reading.Count;
        var value = member.Shape.Read(element.Value, reading);
        reading.Leave();
        var isArray = !member.Shape.IsLeaf && member.Shape is not IRecordShape;
        if (before != reading.Count && member.Name == "id")
        {
            reading.NoteNameless();
        }

        if (before == reading.Count || member.IsRequired || isArray)
        {
            member.Set(thing, value);
        }
    }

    private void ReadAbsent(object thing, MemberShape member)
    {
        if (member.IsRequired)
        {
            reading.Enter(member.Name);
            reading.Refuse(
                $"The member '{member.Name}' is missing; {member.Shape.Wanted} must be there.", member.Shape is StringShape);
            reading.Leave();
            member.Set(thing, member.Shape.Placeholder);
        }
    }
}
