using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using EpisodePlanner.Checking;

namespace EpisodePlanner.Trials.Fuzzing;

/// <summary>Spoils a body in one way of many; now and then leaves it as it is.</summary>
internal sealed class Spoiling(Dice dice)
{
    private const string Mark = "\"@here@\"";

    /// <summary>The bytes to send, and in a word what was done to them.</summary>
    public (byte[] Bytes, string How) Spoil(JsonNode? body) => dice.Between(-4, 12) switch
    {
        <= 1 => (Bytes(Text(body)), "as described"),
        2 => (Bytes(At(body, dice.Pick(["null", "true", "0", "\"\"", "[]", "{}"]))), "wrong type"),
        3 => (Bytes(At(body, Hostile.Number(dice))), "hostile number"),
        4 or 5 => (Bytes(At(body, Quoted(Hostile.Word(dice)))), "hostile word"),
        6 => (Bytes(Without(body)), "missing member"),
        7 => (Bytes(With(body)), "unknown or repeated member"),
        8 => (Bytes(At(body, new string('[', 5_000) + new string(']', 5_000))), "deep"),
        9 => (Bytes(Text(body)[..dice.Between(0, Text(body).Length)]), "cut off"),
        10 => ([.. Bytes(Text(body)), 0xff, 0xfe, 0xc0], "not UTF-8"),
        11 => ([], "empty"),
        _ => (Bytes(At(body, $"[{string.Join(',', Enumerable.Repeat("{}", 20_000))}]")), "long list"),
    };

    private static string Text(JsonNode? body) => body?.ToJsonString() ?? "null";

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    // A lone surrogate can only be sent escaped; the rest goes as it is, control characters included.
    private string Quoted(string word) =>
        dice.Chance(50) || word.Any(char.IsSurrogate) ? JsonSerializer.Serialize(word) : $"\"{word}\"";

    /// <summary>Puts a text in the place of some value.</summary>
    private string At(JsonNode? body, string text)
    {
        var copy = body?.DeepClone();
        var values = Values(copy).ToList();
        if (values.Count == 0)
        {
            return text;
        }

        var (parent, key) = dice.Pick(values);
        if (parent is JsonArray array)
        {
            array[(int)key] = "@here@";
        }
        else
        {
            parent[(string)key] = "@here@";
        }

        return Text(copy).Replace(Mark, text, StringComparison.Ordinal);
    }

    private string Without(JsonNode? body)
    {
        var copy = body?.DeepClone();
        var members = Values(copy).Where(value => value.Parent is JsonObject).ToList();
        if (members.Count > 0)
        {
            var (parent, key) = dice.Pick(members);
            parent.AsObject().Remove((string)key);
        }

        return Text(copy);
    }

    private string With(JsonNode? body)
    {
        var text = Text(body);
        var member = dice.Chance(50) ? "\"surprise\":1" : "\"id\":\"a\",\"id\":\"b\"";
        return text.StartsWith('{') ? $"{{{member}{(text == "{}" ? "" : ",")}{text[1..]}" : text;
    }

    /// <summary>Every value inside, as its parent and its name or place there.</summary>
    private static IEnumerable<(JsonNode Parent, object Key)> Values(JsonNode? node) => node switch
    {
        JsonObject inner => inner.SelectMany(member => Values(member.Value).Prepend((inner, member.Key))),
        JsonArray inner => inner.SelectMany((item, i) => Values(item).Prepend((inner, i))),
        _ => [],
    };
}
