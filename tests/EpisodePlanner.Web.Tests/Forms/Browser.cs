using EpisodePlanner.Web.Forms;

namespace EpisodePlanner.Web.Tests.Forms;

/// <summary>Sends a form as a browser would (HTML Living Standard, constructing the entry list): what stands in its fields.</summary>
internal sealed class Browser
{
    private readonly Dictionary<string, List<string>> sent = [];

    public Browser(FormField form) => Fill(form);

    public IReadOnlyList<string> Typed(string name) => sent.TryGetValue(name, out var values) ? values : [];

    public void Type(string name, string value) => sent[name] = [value];

    private void Fill(FormField field)
    {
        switch (field)
        {
            case GroupField group:
                group.Fields.ToList().ForEach(Fill);
                break;
            case ListField list:
                Send(FormReader.CountOf(list.Name), $"{list.Items.Count}");
                list.Items.ToList().ForEach(Fill);
                break;
            case TickField tick:
                Send(tick.Name, "false");
                Send(tick.Name, tick.IsTicked ? "true" : null);
                break;
            case ChoiceField choice:
                choice.Chosen.ToList().ForEach(chosen => Send(choice.Name, chosen));
                break;
            case TextField text:
                Send(text.Name, text.Value.ReplaceLineEndings("\r\n"));
                break;
            case HiddenField hidden:
                Send(hidden.Name, hidden.Value);
                break;
        }
    }

    private void Send(string name, string? value)
    {
        var values = sent.TryGetValue(name, out var there) ? there : sent[name] = [];
        if (value is not null)
        {
            values.Add(value);
        }
    }
}
