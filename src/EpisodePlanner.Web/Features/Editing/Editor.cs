using System.Text.Json.Nodes;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.History;
using EpisodePlanner.Web.Forms;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Editing;

/// <summary>Shows forms, and saves what was typed into them or says why not; nothing typed is ever lost.</summary>
/// <param name="store">Where workshops are.</param>
internal sealed class Editor(WorkshopStore store)
{
    /// <summary>The form of something as it is, or of something new.</summary>
    /// <param name="found">The workshop.</param>
    /// <param name="editable">What is edited.</param>
    /// <param name="action">Where the form is sent.</param>
    /// <param name="prefilled">What stands in the form of something new.</param>
    public static EditModel Show(FoundDesk found, Editable editable, string action, JsonObject? prefilled = null) =>
        Model(found, editable, action, editable.Current(found.Now.Workshop) ?? prefilled ?? [], []);

    /// <summary>Saves what was typed.</summary>
    /// <returns>The page to go to, or the form with what is to be mended.</returns>
    public async Task<(string? Path, EditModel? Form)> Save(
        FoundDesk found, Editable editable, string action, SentForm sent, CancellationToken stop)
    {
        var workshop = found.Now.Workshop;
        var typed = new FormReader(workshop, sent.Typed).Read(editable.Definition);
        if (sent.EditsList(typed) is { } touched)
        {
            return (null, Model(found, editable, action, typed, []) with { Version = sent.Version, FocusOn = touched });
        }

        if (editable.Change(typed, workshop, out var reasons) is not { } change)
        {
            return (null, Refused(found, editable, action, typed, reasons, sent.Version));
        }

        var edit = new Edit(change, found.Who) { Expects = Expects(editable, sent.Version) };
        var outcome = await store.Make(found.Now.Id, edit, stop);
        return outcome switch
        {
            Made made => (Desk.After(editable.Back(made.Now.Workshop, found.Paths), made), null),
            Unchanged same => (editable.Back(same.Now.Workshop, found.Paths), null),
            Broken broken => (null, Refused(found, editable, action, typed, broken.Reasons.Select(editable.Within), sent.Version)),
            Stale stale => Overtaken(found, editable, action, typed, stale),
            _ => (null, Refused(found, editable, action, typed, [new Reason("$", OutcomeWords.Of(outcome))], sent.Version)),
        };
    }

    /// <summary>Removes something.</summary>
    /// <returns>The page to go to, or the form with why not.</returns>
    public async Task<(string? Path, EditModel? Form)> Remove(
        FoundDesk found, Editable editable, string action, long version, CancellationToken stop)
    {
        if (editable.Removal is not { } removal)
        {
            return (action, null);
        }

        var back = editable.Back(found.Now.Workshop, found.Paths);
        var outcome = await store.Make(found.Now.Id, new Edit(removal, found.Who) { Expects = Expects(editable, version) }, stop);
        if (outcome is Made or Unchanged)
        {
            return (Desk.After(back == action ? found.Paths.Now : back, outcome), null);
        }

        IEnumerable<Reason> reasons = outcome is Broken broken ? broken.Reasons : [new Reason("$", OutcomeWords.Of(outcome))];
        var document = editable.Current(found.Now.Workshop) ?? [];
        return (null, Refused(found, editable, action, document, reasons.Select(reason => reason with { Where = "$" }), version));
    }

    private static Expectation Expects(Editable editable, long version) => version > 0
        ? new Expectation.Present(editable.What, [version])
        : new Expectation.Absent(editable.What);

    private static (string? Path, EditModel? Form) Overtaken(
        FoundDesk found, Editable editable, string action, JsonObject typed, Stale stale)
    {
        var theirs = editable.Current(stale.Now.Workshop);
        var builder = new FormBuilder(stale.Now.Workshop, []);
        var differences = theirs is null
            ? []
            : FormDifferences.Between(builder.Build(editable.Definition, theirs), builder.Build(editable.Definition, typed));
        if (theirs is not null && differences.Count == 0)
        {
            // What was typed is what is there: the same form, sent twice.
            return (editable.Back(stale.Now.Workshop, found.Paths), null);
        }

        var says = theirs is null ? "It was deleted after you opened it; saving adds it again." : "It was saved after you opened it.";
        return (null, Model(found, editable, action, typed, []) with
        {
            Version = stale.Now.VersionOf(editable.What) ?? 0,
            Overtaken = new Overtaken(says, differences),
        });
    }

    private static EditModel Refused(
        FoundDesk found, Editable editable, string action, JsonObject typed, IEnumerable<Reason> reasons, long version)
    {
        var model = Model(found, editable, action, typed, reasons.ToValueList());
        return model with { Version = version, FocusOn = FirstWrong(model.Form)?.Name };
    }

    private static EditModel Model(FoundDesk found, Editable editable, string action, JsonObject document, ValueList<Reason> reasons)
    {
        var workshop = found.Now.Workshop;
        var builder = new FormBuilder(workshop, reasons);
        var form = builder.Build(editable.Definition, document);
        var exists = editable.Current(workshop) is not null;
        return new EditModel
        {
            Title = editable.Title(workshop),
            Word = editable.Word,
            WorkshopName = workshop.Name,
            Paths = found.Paths,
            Page = editable.Page,
            Action = action,
            Back = editable.Back(workshop, found.Paths),
            IsNew = !exists,
            CanDelete = editable.Removal is not null,
            Version = found.Now.VersionOf(editable.What) ?? 0,
            Form = form,
            Problems = Problems(form, builder),
            Cautions = editable.Cautions(workshop),
        };
    }

    private static ValueList<EditProblem> Problems(GroupField form, FormBuilder builder) => form.WithAllInside()
        .SelectMany(field => field.Problems, (field, says) => new EditProblem(field.ElementId, $"{field.Label}: {says}"))
        .Concat(builder.Elsewhere(form).Select(says => new EditProblem(null, says)))
        .ToValueList();

    private static FormField? FirstWrong(GroupField form) =>
        form.WithAllInside().FirstOrDefault(field => field.Problems.Count > 0 && field is not (GroupField or ListField));
}
