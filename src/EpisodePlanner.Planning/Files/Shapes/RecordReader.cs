using System.Runtime.InteropServices;
using System.Text.Json;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Reads one object: every member known, present once, and each that must be there present.</summary>
internal sealed class RecordReader(MemberShape[] members, Dictionary<string, int> byName, Reading reading)
{
    private readonly JsonElement?[] found = new JsonElement?[members.Length];
    private int next;

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
        if (IndexOf(property) is var index and >= 0)
        {
            Note(index, property.Value);
        }
        else if (!Unicode.TryGet(property, out var name))
        {
            reading.Complain("?", "The name of this member is not proper Unicode text.");
        }
        else if (byName.TryGetValue(name, out index))
        {
            Note(index, property.Value);
        }
        else
        {
            reading.Complain(name, $"There is no member {Say.Quote(name)} here; {(reading.IsFull ? "" : Hint(name))}");
        }
    }

    /// <summary>The member whose name stands here as it is, without escapes; members mostly come in their order.</summary>
    private int IndexOf(JsonProperty property)
    {
        var name = JsonMarshal.GetRawUtf8PropertyName(property);
        for (var step = 0; step < members.Length; step++)
        {
            var index = (next + step) % members.Length;
            if (name.SequenceEqual(members[index].NameBytes))
            {
                next = index + 1;
                return index;
            }
        }

        return -1;
    }

    private void Note(int index, JsonElement value)
    {
        if (found[index] is not null)
        {
            reading.Refuse(members[index].Name, $"The member '{members[index].Name}' is written twice; keep one of them.");
            return;
        }

        found[index] = value;
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
