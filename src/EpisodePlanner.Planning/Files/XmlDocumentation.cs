using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace EpisodePlanner.Planning.Files;

/// <summary>The summaries of the compiler's documentation files, as plain text.</summary>
internal sealed partial class XmlDocumentation
{
    private readonly Dictionary<string, string> summaries = new(StringComparer.Ordinal);

    /// <summary>Reads the documentation files that are there.</summary>
    public XmlDocumentation(IEnumerable<string> files)
    {
        foreach (var member in files.Where(File.Exists).SelectMany(file => XDocument.Load(file).Descendants("member")))
        {
            if (member.Element("summary") is { } summary)
            {
                summaries[member.Attribute("name")!.Value] = Plain(summary);
            }
        }
    }

    /// <summary>The summary of a member; an inherited one is that of <see cref="IThing"/>.</summary>
    public string? Find(string name) =>
        summaries.TryGetValue(name, out var summary) ? summary
        : name.EndsWith(".Id", StringComparison.Ordinal) ? summaries.GetValueOrDefault($"P:{typeof(IThing).FullName}.Id")
        : null;

    /// <summary>The name of a type in documentation files; that of its definition where it is generic.</summary>
    public static string NameOf(Type type) => (type.IsGenericType ? type.GetGenericTypeDefinition() : type).FullName!;

    private static string Plain(XElement summary)
    {
        foreach (var reference in summary.Descendants().Where(element => element.Attribute("cref") is not null).ToList())
        {
            var name = reference.Attribute("cref")!.Value.Split('.')[^1].Split('`')[0];
            reference.ReplaceWith($"\"{JsonNamingPolicy.CamelCase.ConvertName(name)}\"");
        }

        return Blanks().Replace(summary.Value, " ").Trim();
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
