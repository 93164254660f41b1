using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Objects with the members of a record, in the order of declaration.</summary>
internal sealed class RecordShape<T> : Shape, IRecordShape
    where T : class
{
    private readonly T defaults = Activator.CreateInstance<T>();
    private readonly MemberShape[] members;
    private readonly Dictionary<string, int> byName;

    public RecordShape()
    {
        members = [.. typeof(T).GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.SetMethod is not null)
            .OrderBy(property => property.MetadataToken)
            .Select(MemberShape.Of)];
        byName = Enumerable.Range(0, members.Length).ToDictionary(i => members[i].Name, StringComparer.Ordinal);
    }

    public override Type Type => typeof(T);

    public override string Wanted => "an object in { }";

    public override object Placeholder => Complete(Activator.CreateInstance<T>());

    public override bool IsLeaf => false;

    public override string PartName { get; } = JsonNamingPolicy.CamelCase.ConvertName(
        string.Join("Of", typeof(T).GetGenericArguments().Select(of => of.Name).Prepend(typeof(T).Name.Split('`')[0])));

    public IReadOnlyList<MemberShape> Members => members;

    /// <summary>A copy of a record with one member changed.</summary>
    public T With(T thing, string name, object value)
    {
        var copy = Activator.CreateInstance<T>();
        foreach (var member in members)
        {
            member.Set(copy, member.Name == name ? value : member.Get(thing));
        }

        return copy;
    }

    public override object Read(JsonElement element, Reading reading)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            return new RecordReader(members, byName, reading).Read(element, Activator.CreateInstance<T>());
        }

        reading.RefuseKind(element, Wanted);
        if (typeof(IThing).IsAssignableFrom(typeof(T)))
        {
            reading.NoteNameless();
        }

        return Placeholder;
    }

    public override void Write(CanonicalWriter writer, object value)
    {
        writer.BeginObject();
        foreach (var member in members)
        {
            var part = member.Get(value);
            if (part is not null && (member.IsRequired || !part.Equals(member.Get(defaults))))
            {
                writer.Name(member.Name);
                member.Shape.Write(writer, part);
            }
        }

        writer.EndObject();
    }

    public override int Compare(object left, object right)
    {
        foreach (var member in members)
        {
            if (Compare(member, member.Get(left), member.Get(right)) is var order and not 0)
            {
                return order;
            }
        }

        return 0;
    }

    public override object Rebuild(object value, Func<object, object> leaf)
    {
        var copy = Activator.CreateInstance<T>();
        var same = true;
        foreach (var member in members)
        {
            var part = member.Get(value);
            var rebuilt = part is null ? null : member.Shape.Rebuild(part, leaf);
            same &= member.Shape.IsLeaf ? Equals(part, rebuilt) : ReferenceEquals(part, rebuilt);
            member.Set(copy, rebuilt);
        }

        return same ? value : copy;
    }

    public override JsonObject Describe(SchemaParts parts) => parts.Describe(typeof(T), members);

    private static int Compare(MemberShape member, object? left, object? right) => (left, right) switch
    {
        (null, null) => 0,
        (null, _) => -1,
        (_, null) => 1,
        _ => member.Shape.Compare(left, right),
    };

    private T Complete(T thing)
    {
        foreach (var member in members)
        {
            if (member.IsRequired)
            {
                member.Set(thing, member.Shape.Placeholder);
            }
        }

        return thing;
    }
}
