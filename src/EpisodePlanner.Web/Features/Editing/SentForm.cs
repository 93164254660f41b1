using System.Globalization;
using System.Text.Json.Nodes;
using EpisodePlanner.Web.Forms;

namespace EpisodePlanner.Web.Features.Editing;

/// <summary>A form of a thing, as it was sent.</summary>
/// <param name="form">Its values.</param>
internal sealed class SentForm(IFormCollection form)
{
    /// <summary>The version that the form was made from; 0 for something new.</summary>
    public long Version =>
        long.TryParse(form["_version"], NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : 0;

    /// <summary>The values of a field.</summary>
    public IReadOnlyList<string> Typed(string name) =>
        form.TryGetValue(name, out var values) ? [.. values.OfType<string>()] : [];

    /// <summary>
    /// Adds, removes or moves a group of a list, where a button for that was pressed instead of the one for saving.
    /// </summary>
    /// <returns>The name of the field that is then to have the focus; null where saving was asked for.</returns>
    public string? EditsList(JsonObject document)
    {
        if (form["_add"] is [{ } list])
        {
            FormLists.Add(document, list);
            return $"{list}[{(Typed(FormReader.CountOf(list)) is [var count, ..] ? count : "0")}]";
        }

        if (form["_remove"] is [{ } gone])
        {
            FormLists.Remove(document, gone);
            return gone;
        }

        if (form["_up"] is [{ } moved])
        {
            FormLists.MoveUp(document, moved);
            return moved;
        }

        return null;
    }
}
